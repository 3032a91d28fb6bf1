// What a price book holds.
#pragma once

#include <quoin/pricebook/price_book.hpp>

#include "words/phrase.hpp"

namespace quoin {

struct ListingWords {
    Phrase<Text, Text, Text, Date, Date> book; ///< community, builder, version, first and last day
    // The columns.
    Phrase<> plan;
    Phrase<> name;
    Phrase<> style;
    Phrase<> square_feet;
    Phrase<> bedrooms;
    Phrase<> bathrooms;
    Phrase<> base_price;
    Phrase<> elevation;
    Phrase<> elevation_price;
    Phrase<> lot;
    Phrase<> status;
    Phrase<> premium;
    Phrase<> grade;
    Phrase<> plans;
    Phrase<> flood_zone;
    Phrase<> note;
    Phrase<> option;
    Phrase<> area;
    Phrase<> kind;
    Phrase<> price;
    Phrase<> unit;
    Phrase<> cutoff;
    // What stands in them.
    Phrase<> every_plan; ///< fits a lot
    Phrase<> yes;
    Phrase<> no;
    Phrase<Text, Text> price_range;
    NamesOf<OptionKind> kind_of;
};

} // namespace quoin
