// The cash that a loan takes, in English.
#pragma once

#include "words/cash.hpp"

namespace quoin::english {

inline constexpr CashWords cash = {
    .title = "The cash it takes",
    .month = "{}: {} a month. {}",
    .cash = "Cash",
    .principal_reduced = "principal reduced at closing, by the lender credit",
    .premium_in_cash = "{}, in cash",
    .appraisal_gap = "of it, because the appraisal is under the price",
    .cash_needed = "cash needed",
    .left_to_bring = "left to bring to the closing",
    .paid_back = "paid back at the closing",
    .lender_credit_reduces =
        "The lender credit for this rate comes to more than closing costs and prepaids: {} of it "
        "reduces the principal at closing. The loan and its payment stay, and end sooner.",
    .lender_credit_lost =
        "{} of the lender credit for this rate is lost: closing costs and prepaids do not come to "
        "as much, and it pays nothing else. A lower rate gives less of a credit.",
    .when = "When",
    .closing_costs = "Closing costs",
    .buyers_sums = "buyer's sums",
    .when_ordered = "when ordered",
    .in_finance_charge = "{} (finance charge)",
    .prepaids = "Prepaid at closing",
    .bill_due = "due {}",
    .no_escrow = "Escrow account: none (waived, or the due days are not known)",
    .escrow = "Escrow account: {} at closing, {} a month, never under its cushion of {}",
    .escrow_month = "month",
    .escrow_in = "in",
    .escrow_bills = "bills",
    .escrow_balance = "balance",
    .escrow_bill = "{} due {}: {}",
    .set_from_settled = "It is set from the settled tax.",
    .set_from_land = "If the lender sets it from the land-only bills instead, it is {} a month in "
                     "the first year.",
    .analysis = {"The analysis after the first year finds {}.",
                 "The analysis after the second year finds {}.",
                 "The analysis after the third year finds {}.",
                 "The analysis after the fourth year finds {}."},
    .finds_short = "{} short and spreads it over twelve months{}",
    .finds_over = "{} over, which is paid back{}",
    .finds_nothing = "nothing missing{}",
    .more_a_month = "; {} more a month",
    .less_a_month = "; {} less a month",
    .credits = "Credits",
    .used_for = "used for {}",
    .without_use = "nothing left that it may pay",
    .cap_of_price = "interested parties may give {} of the price; {} of it counts here",
    .cap_of_value = "interested parties may give {} of the value; {} of it counts here",
    .over_cap = "{} is over that cap. Given all the same it would come off the price for LTV, "
                "which would be {}.",
    .buydown = "Temporary buydown: {} put up at closing, {} of it by the buyer",
    .bought_down = "year {}: as at {}, {} principal and interest ({} a month from the subsidy)",
    .after_buydown = "then {}; the buyer qualifies at the note rate, {}",
    .cost_of_credit = "What the loan costs",
    .prepaid_finance_charge = "prepaid finance charge",
    .own_part_of_buydown = "of it, the buyer's part of the buydown",
    .amount_financed = "amount financed",
    .finance_charge = "finance charge",
    .total_of_payments = "total of payments",
    .cost_in_five_years = "in five years: loan and its costs, as disclosed",
    .principal_in_five_years = "in five years: principal paid off",
    .payments = "payments {} to {}, as disclosed",
    .apr = "APR",
    .no_apr = "none",
    .total_interest_percentage = "total interest percentage",
};

} // namespace quoin::english
