// An option now or later: through the builder, or after the closing.
#pragma once

#include <quoin/answers/later.hpp>

#include "words/phrase.hpp"

namespace quoin {

struct LaterWords {
    Phrase<> title;
    Phrase<Text, Text> named;      ///< option, its level
    Phrase<Text, Text, Text> item; ///< option as named, its id, change of the price
    Phrase<Text> not_from_builder; ///< why
    Phrase<Money, Text> after;     ///< estimate, its note
    Phrase<> no_estimate;          ///< of the price book
    Phrase<Text> cannot_be_had;    ///< why the loan cannot
    Phrase<Money, Text> without;   ///< the month without the option, terms
    NamesOf<LaterWay> way;
    Phrase<> at_closing;
    Phrase<> a_month;
    Phrase<int> after_years;             ///< before a row: "cost after 5 years"
    Phrase<Text, Text> way_barred;       ///< way, why
    Phrase<> when_more;                  ///< above the sentences below
    Phrase<Text, Text, Text> costs_more; ///< way, the way it is dearer than, when
    Phrase<> costs_over_the_home_without;
    Phrase<> trades_whenever;
};

} // namespace quoin
