// What income, debts and cash allow.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct AffordWords {
    Phrase<> title;
    Phrase<Date, Date> dates; ///< on figures alone: as of, closing
    Phrase<Text> assumed;
    Phrase<int> reserve; ///< months

    // The limits, and how far the price is from them.
    Phrase<Text> front_ratio; ///< of the income, percent
    Phrase<Text> back_ratio;
    Phrase<Text> by_residual_income; ///< instead of the ratio: percent of the guide
    Phrase<> residual_income;
    Phrase<> cash;
    Phrase<> program;
    Phrase<> takes;
    Phrase<> most;
    Phrase<> left;
    Phrase<> short_by; ///< where no price fits: what is missing

    // The highest price.
    Phrase<Money, Text, Money, Money> up_to; ///< price, whether no ratio is held, month, cash
    Phrase<> held_to_no_ratio;
    Phrase<Text, Text, Text> binds; ///< limits, the program's reasons, what is without them
    Phrase<Text> binds_since;
    Phrase<Money, Text> without; ///< price, what binds there
    Phrase<Text> where_binds;
    Phrase<Rate, Text> qualifying; ///< rate, where that is written
    Phrase<> whole_percents;
    Phrase<Money, Text> refused; ///< least price, reasons
    Phrase<Money> nearest;       ///< the least price tried

    // A file that automated underwriting is asked for.
    Phrase<Text> automated_the_same; ///< the ratio
    Phrase<> automated_none_published;
    Phrase<> automated_not_known;
    Phrase<Text, Text> passed; ///< the ratio, percent of the guide

    // Residual income.
    Phrase<Money, Money, Text> residual_tested; ///< guide, upkeep, square feet
    Phrase<Text> residual_lacks;                ///< what is not given
    Phrase<> lacks_income;
    Phrase<> lacks_taxes;
    Phrase<> lacks_household;
    Phrase<> lacks_region;
    Phrase<> lacks_square_feet;

    // What a further step would take.
    Phrase<Money, Text> step_refused; ///< price, reasons
    Phrase<Money, Text, Text> step;   ///< price, what it takes, the lower rate that would do
    Phrase<Text, Text> and_also;
    Phrase<Money> more_cash;
    Phrase<Money> more_income;
    Phrase<Money, Money> more_income_or_less_debts;
    Phrase<Money> more_after_tax;
    Phrase<Money, Money> more_after_tax_or_less_debts;
    Phrase<Rate, Text> lower_rate; ///< rate, points

    // The plans within the price.
    Phrase<> no_plan;
    Phrase<Text, Text, Money, Text, Text> plan; ///< plan, pairs, least price, its elevation and lot
    Phrase<int> pairs;                          ///< of elevation and free lot

    Phrase<> ratios_are_guides; ///< a caution
};

} // namespace quoin
