// Why a loan cannot be had for a home, in English.
#pragma once

#include "words/refusals.hpp"

namespace quoin::english {

inline constexpr RefusalWords refusals = {
    .cannot_be_had = "{} cannot be had: {}",
    .list = {{{RuleList::maximum_ltv, "the most that the program lends"},
              {RuleList::loan_limit, "the program's loan limit"},
              {RuleList::upfront_fee, "the program's upfront fee"},
              {RuleList::annual_fee, "the program's annual fee"},
              {RuleList::annual_fee_months, "how long the program's annual fee is paid"},
              {RuleList::contribution_cap, "the most that sellers may contribute"},
              {RuleList::points_adjustment, "the sheet's adjustment of points"},
              {RuleList::mi_factors, "the price of mortgage insurance"},
              {RuleList::single_premium, "the single premium of mortgage insurance"},
              {RuleList::homeowner, "the rate of homeowner's insurance"},
              {RuleList::ratios,
               "the part of the income that the program lets housing and debts take"},
              {RuleList::residual_income, "what the program wants left of the income to live on"}}},
    .ended = "{} after {:en} is not in the data",
    .not_yet = "{} before {:en} is not in the data",
    .no_row = "{} for a loan like this one is not in the data",
    .term_not_offered = "the program has no loans of this term",
    .place_not_eligible = "the home is outside the program's eligible area",
    .score_needed = "the program's limit depends on a credit score, and none is given",
    .score_below_minimum = "the credit score is below the program's minimum",
    .base_over_program = "base loan {} is over the program's most, {}: {} more down is needed",
    .base_over_area = "base loan {} is over the area's limit, {}: {} more down is needed",
    .all_over_program = "loan with the premium in it, {} is over the program's most, {}: {} less "
                        "of it, by more down or the premium in cash, is needed",
    .all_over_area = "loan with the premium in it, {} is over the area's limit, {}: {} less of it, "
                     "by more down or the premium in cash, is needed",
    .rate_not_offered = "the rate sheet has no such rate for this program, term and lock",
    .mi_not_offered = "no mortgage insurance factor for this LTV, score and term",
    .insurance_not_offered = "no homeowner's insurance rate for a dwelling of this value",
    .buydown_not_allowed = "the temporary buydown does not fit the note rate or the term",
    .cash_short = "cash of {} is {} short of the least that is needed, {}",
};

} // namespace quoin::english
