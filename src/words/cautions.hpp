// What has to be known beside the figures of an answer.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct CautionWords {
    Phrase<Date, Text> estimate; ///< as of, who gives the binding papers
    Phrase<> no_originator;
    Phrase<Text> originator;
    /// Lender, rates' day, license, last day, and what more has to be known of the rates.
    Phrase<Text, Date, Text, Date, Text, Text> rates_until_locked;
    Phrase<> rates_out_of_date;
    Phrase<> sample_rates;
    Phrase<Text, Text> costs_as_known; ///< place
    Phrase<> sample_place;
    Phrase<Text, Text> rule_continued; ///< program, which list ended
    Phrase<int, Date> lock_ends_first; ///< days of the lock, its last day
    Phrase<> rate_adjustable;
    Phrase<Text> extra_principal; ///< of which loans
    Phrase<Money, Text> extra_of; ///< amount, scenario
    Phrase<> licensed_trades;
    Phrase<> agent_license;
};

} // namespace quoin
