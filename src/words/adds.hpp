// What each option adds, and what comes with an option.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct AddsWords {
    Phrase<> title;
    Phrase<Money> contract_price;
    Phrase<> loans;
    /// Loan, its month, its terms, a month for each $1,000 borrowed.
    Phrase<Text, Money, Text, Money> scenario;
    Phrase<> price;

    // Over the lists of options.
    Phrase<> alone;
    Phrase<> taking_out; ///< one that is chosen
    Phrase<> held;       ///< in a package
    Phrase<> barred;
    Phrase<> stacked;
    Phrase<> together; ///< the sum of the stacked ones
    Phrase<> jumps;

    // One option.
    Phrase<Text, Text> named;         ///< option, level
    Phrase<Text, Text> in_package;    ///< option, package
    Phrase<Text, Text> why_barred;    ///< option, reason
    Phrase<Text, Text, Text> added;   ///< option, id, change of the price
    Phrase<Text, Text, Text> in_home; ///< likewise, of what it adds to a home that has it
    Phrase<Text> counted_with;        ///< options that would go with it
    Phrase<int> wish;                 ///< its rank
    Phrase<Text> with;                ///< options that come along
    Phrase<Text> and_with;            ///< options that go along when it is taken out
    Phrase<Text> instead_of;
    Phrase<Text> before;               ///< stage of the build
    Phrase<Money, Text> after_closing; ///< estimate, note
    Phrase<Text, Text> jump;           ///< loan, what jumps under it

    // What it adds to.
    Phrase<> a_month;
    Phrase<> to_close;
    Phrase<> over_five_years;
    Phrase<> over_loan;

    Phrase<> alone_and_stacked; ///< a caution
};

} // namespace quoin
