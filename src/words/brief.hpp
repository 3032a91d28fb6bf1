// An answer in one line.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct BriefWords {
    Phrase<Money> a_month;
    Phrase<Money> a_month_in_all;
    Phrase<Text> more_a_month; ///< with its sign
    Phrase<Money> cash_needed;
    Phrase<Text> more_cash; ///< needed, with its sign
    Phrase<Text> against;   ///< the loan that it is held against
    /// Name, rate, APR, term, down payment; how long the rate is fixed, where it is adjustable.
    Phrase<Text, Rate, Text, Text, Money, Text> loan;
    Phrase<Text> adjustable; ///< after so long
    Phrase<Date> estimate;
    Phrase<Date> sample_estimate; ///< with sample rates
    Phrase<Date> estimates;       ///< of several lines above
    Phrase<Date> sample_estimates;
    Phrase<Text, Text> priced; ///< what, its price
    Phrase<> together;         ///< the options that are chosen
    Phrase<Text> in_home;      ///< an option that is in the home already
    Phrase<Money> up_to;
    Phrase<Text> no_price; ///< works with this loan
    Phrase<Text> on_lot;
    Phrase<Text> worth;
    Phrase<Money> closest;             ///< price of the home that misses by the least
    Phrase<Rate, Text> at_rate;        ///< what the month then changes by
    Phrase<Text, Money, Money> way;    ///< what it adds at closing, and a month
    Phrase<Text, Money> way_estimated; ///< what it may cost after closing
};

} // namespace quoin
