// The cash that a loan takes, in English.
#pragma once

#include "words/cash.hpp"

namespace quoin::english {

inline constexpr CashWords cash = {
    .title = "The cash you need",
    .month = "{}: {} a month. {}",
    .cash = "Cash",
    .points = "points",
    .lender_credit = "lender credit",
    .principal_reduced = "principal paid down at closing",
    .single_premium = "{}, single premium",
    .premium_in_cash = "{}, in cash",
    .appraisal_gap = "part of it: price above appraised value",
    .cash_needed = "cash needed",
    .left_to_bring = "cash to close",
    .lender_credit_reduces =
        "The lender credit at this interest rate is more than your closing costs and prepaids. The "
        "other {} pays down your principal at closing. Your loan amount and payment stay the same, "
        "and the loan ends sooner.",
    .lender_credit_lost =
        "You would lose {} of the lender credit at this interest rate. It pays only closing costs "
        "and prepaids, and those come to less. A lower rate comes with a smaller credit.",
    .when = "When it is due",
    .closing_costs = "Closing costs",
    .buyers_sums = "buyer's total",
    .when_ordered = "when ordered",
    .in_finance_charge = "{} (finance charge)",
    .prepaids = "Prepaids",
    .prepaid_interest =
        [](int days, Money a_day) {
            return fmt::format("interest, {} at {} a day",
                               days == 1 ? std::string("1 day") : fmt::format("{} days", days),
                               dollars(a_day));
        },
    .prepaid_insurance =
        [](int months) {
            return months == 1 ? std::string("insurance, 1 month")
                               : fmt::format("insurance, {} months", months);
        },
    .tax_bill = "property taxes and district charges",
    .bill_due = "due {:us}",
    .no_escrow = "Escrow account: none. It is waived, or the due dates are not known.",
    .escrow = "Escrow account: {} at closing, then {} a month. Its balance never drops below {}.",
    .escrow_month = "month",
    .escrow_in = "paid in",
    .escrow_bills = "bills",
    .escrow_balance = "balance",
    .calendar_month = "{}/{}",
    .escrow_bill = "{}, due {:us}: {}",
    .set_from_settled = "These deposits are set from the full taxes, after the home is assessed.",
    .set_from_land = "If the lender sets them from the first year's bills instead, such as "
                     "land-only taxes, you pay {} a month into escrow in the first year.",
    .analysis = {"The escrow review after the first year finds {}.",
                 "The escrow review after the second year finds {}.",
                 "The escrow review after the third year finds {}.",
                 "The escrow review after the fourth year finds {}."},
    .finds_short = "{} missing. You make it up over the next 12 months{}",
    .finds_over = "{} too much. You get it back{}",
    .finds_nothing = "nothing missing{}",
    .more_a_month = ", and you pay {} more a month into escrow",
    .less_a_month = ", and you pay {} less a month into escrow",
    .credits = "Credits",
    .used_for = "used for {}",
    .without_use = "not used: nothing left that it may pay",
    .cap_of_price =
        "The seller and other interested parties may contribute up to {} of the price. Of these "
        "credits, {} counts toward that limit.",
    .cap_of_value =
        "The seller and other interested parties may contribute up to {} of the home's value. Of "
        "these credits, {} counts toward that limit.",
    .over_cap =
        "{} is over that limit and is not used here. If it were given anyway, it would come off "
        "the price when the loan-to-value (LTV) is figured, and the LTV would be {}.",
    .buydown = "Temporary buydown: {} paid at closing, {} of it by you",
    .bought_down =
        "year {0}: you pay {2} of principal and interest a month, as if the rate were {1}; the "
        "buydown pays the other {3}",
    .after_buydown = "then {} a month; you qualify at the note rate, {}",
    .cost_of_credit = "What the loan costs",
    .prepaid_finance_charge = "prepaid finance charge",
    .own_part_of_buydown = "part of it: your share of the buydown",
    .amount_financed = "amount financed",
    .finance_charge = "finance charge",
    .total_of_payments = "total of payments",
    .cost_in_five_years = "in 5 years: paid for the loan and its costs, as disclosed",
    .principal_in_five_years = "in 5 years: principal paid off",
    .payments =
        [](int from, int to) {
            return from == to ? fmt::format("payment {}, as disclosed", from)
                              : fmt::format("payments {} to {}, as disclosed", from, to);
        },
    .apr = "APR",
    .no_apr = "none",
    .total_interest_percentage = "total interest percentage (TIP)",
};

} // namespace quoin::english
