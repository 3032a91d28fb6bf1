// The rows of the tables that set loans side by side, in English.
#pragma once

#include "words/side_by_side.hpp"

namespace quoin::english {

inline constexpr SideWords side = {
    .month_settled = "a month, settled",
    .month_on_land = "a month, tax on land only",
    .bought_down = "year {}, bought down",
    .extra_principal = "extra principal, chosen",
    .month_at_highest = "at the highest rate",
    .note_rate = "note rate",
    .apr = "APR",
    .points = "points",
    .term = "term",
    .lock = "rate lock",
    .days = "{} days",
    .down_payment = "down payment",
    .down_percent = "down, of the price",
    .ltv = "LTV",
    .highest_rate = "highest rate",
    .fixed = "fixed",
    .contract_price = "contract price",
    .base_loan = "base loan",
    .upfront_fee = "upfront fee",
    .upfront_in_loan = "fee in the loan",
    .upfront_in_cash = "upfront fee, in cash",
    .fee_and_premium = "fee, premium",
    .fee_and_premium_in_loan = "fee, premium in the loan",
    .fee_and_premium_in_cash = "fee, premium, in cash",
    .single_premium = "single premium",
    .single_premium_in_loan = "single premium in the loan",
    .single_premium_in_cash = "single premium, in cash",
    .loan = "loan",
    .insurance = "mortgage insurance",
    .insurance_a_year = "insurance, a year",
    .last_insured = "last insured payment",
    .if_asked = "... if asked at 80%",
    .paid_up = "paid up",
    .none = "none",
    .whole_term = "whole term",
    .cash_needed = "cash needed",
    .to_bring = "left to bring",
    .to_bring_or_back = "left to bring (minus: back)",
    .credits_without_use = "credits without use",
    .lender_credit_lost = "lender credit lost",
    .credits_over_cap = "credits over the cap",
    .paid_in_five = "paid in five years",
    .balance_after_five = "balance after five",
    .balance_after_ten = "balance after ten",
    .interest_over_loan = "interest, whole loan",
    .paid_over_loan = "paid, whole loan",
    .payments = "payments",
};

} // namespace quoin::english
