// Why a loan cannot be had for a home, and what the data do not tell of a program.
#pragma once

#include <quoin/loan/loan_figures.hpp>

#include "words/phrase.hpp"

namespace quoin {

struct RefusalWords {
    Phrase<Text, Text> cannot_be_had; ///< scenario, reason
    NamesOf<RuleList> list;
    Phrase<Text, Date> ended;   ///< list, last day
    Phrase<Text, Date> not_yet; ///< list, first day
    Phrase<Text> no_row;        ///< list

    Phrase<> term_not_offered;
    Phrase<> place_not_eligible;
    Phrase<> score_needed;
    Phrase<> score_below_minimum;
    // What is lent, the most, and how much that is over it.
    Phrase<Money, Money, Money> base_over_program;
    Phrase<Money, Money, Money> base_over_area;
    Phrase<Money, Money, Money> all_over_program; ///< the premium in it
    Phrase<Money, Money, Money> all_over_area;
    Phrase<> rate_not_offered;
    Phrase<> mi_not_offered;
    Phrase<> insurance_not_offered;
    Phrase<> buydown_not_allowed;
    Phrase<Money, Money, Money> cash_short; ///< cash, what is missing, what is needed
};

} // namespace quoin
