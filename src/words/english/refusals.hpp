// Why a loan cannot be had for a home, in English.
#pragma once

#include "words/refusals.hpp"

namespace quoin::english {

inline constexpr RefusalWords refusals = {
    .cannot_be_had = "{} is not available: {}",
    .list = {{{RuleList::maximum_ltv, "the most this program lends"},
              {RuleList::loan_limit, "the program's loan limit"},
              {RuleList::upfront_fee, "the program's upfront fee"},
              {RuleList::annual_fee, "the program's annual fee"},
              {RuleList::annual_fee_months, "how long the program's annual fee is paid"},
              {RuleList::contribution_cap,
               "the limit on contributions from the seller and other interested parties"},
              {RuleList::points_adjustment, "the rate sheet's adjustment of points"},
              {RuleList::mi_factors, "the price of mortgage insurance"},
              {RuleList::single_premium, "the single premium of mortgage insurance"},
              {RuleList::homeowner, "the rate for homeowner's insurance"},
              {RuleList::ratios, "the share of income the program allows for housing and debts"},
              {RuleList::residual_income, "the residual income the program asks for"}}},
    .ended = "{} is known only through {:en}",
    .not_yet = "{} is known only from {:en} on",
    .no_row = "{} for a loan like this one is not in the data",
    .term_not_offered = "the program has no loans with this term",
    .place_not_eligible = "the home is outside the program's eligible area",
    .score_needed = "the program's limit depends on the credit score, and none is given",
    .score_below_minimum = "the credit score is below the program's minimum",
    .base_over_program = "the base loan amount, {}, is over the program's maximum of {}; it takes "
                         "{} more down",
    .base_over_area =
        "the base loan amount, {}, is over the area's limit of {}; it takes {} more down",
    .all_over_program = "the loan amount with the premium in it, {}, is over the program's maximum "
                        "of {}; to lower it by {}, put more down or pay the premium in cash",
    .all_over_area = "the loan amount with the premium in it, {}, is over the area's limit of {}; "
                     "to lower it by {}, put more down or pay the premium in cash",
    .rate_not_offered = "the rate sheet has no such rate for this program, term and rate lock",
    .mi_not_offered = "there is no mortgage insurance rate for this loan-to-value (LTV), credit "
                      "score and loan term",
    .insurance_not_offered = "there is no homeowner's insurance rate for a home of this value",
    .buydown_not_allowed = "the temporary buydown does not fit the note rate or the loan term",
    .cash_short = "cash of {} is {} short of the {} needed",
};

} // namespace quoin::english
