// A loan month by month.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

/// The headings of a month's figures.
struct ScheduleColumns {
    Phrase<> payment; ///< its number
    Phrase<> due;
    Phrase<> rate;
    Phrase<> paid;
    Phrase<> interest;
    Phrase<> principal;
    Phrase<> from_buydown;
    Phrase<> balance;
};

struct ScheduleWords {
    Phrase<> title;
    Phrase<Text, Money, Text> loan; ///< scenario, loan, terms
    /// Extra principal, payments with it and without, the last, less interest, less insurance.
    Phrase<Money, int, int, Date, Money, Text> saves;
    Phrase<Money> saves_insurance;
    // The way that an adjustable rate is taken to go.
    Phrase<> index_of_the_day;
    Phrase<> given_index;
    Phrase<> worst_case;
    Phrase<Money> buydown; ///< what it pays in all

    ScheduleColumns table;
    Phrase<> closing;  ///< the row of what is paid down there
    Phrase<> together; ///< the row of the sums
};

} // namespace quoin
