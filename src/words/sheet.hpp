// What the buyer takes home.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct SheetWords {
    Phrase<Text, Text, Text> page; ///< its title: community, plan, lot
    Phrase<> title;
    // The home, whose and when: each a label, and values that are not names alone.
    Phrase<> buyer;
    Phrase<> plan;
    Phrase<Text, Text> plan_and_style;
    Phrase<> floor_area;
    Phrase<Text> square_feet;
    Phrase<> elevation;
    Phrase<> lot;
    Phrase<> as_of;
    Phrase<> closing;
    Phrase<> price_book;
    Phrase<> in_force_to;
    Phrase<Date> day;       ///< of these
    Phrase<Date> table_day; ///< in a table
    // The sections; those of a quote are headed as they are there.
    Phrase<> home;
    Phrase<> requests;
    Phrase<> month_of_each; ///< loan, where there are several
    Phrase<> cash;
    Phrase<Date> estimates; ///< as of
    Phrase<> calendar;
    Phrase<> costs;
    Phrase<Text> prepaid; ///< what for
    Phrase<Date> due;
    Phrase<> catches;
    Phrase<Text, Text> catch_of; ///< program, its catch
    Phrase<> rests;
    // Who gave it.
    Phrase<> who;
    Phrase<> prepared_by;
    Phrase<> originator;
    Phrase<> license;
    Phrase<> telephone;
    Phrase<> gone_through; ///< the day, to be written by hand
};

} // namespace quoin
