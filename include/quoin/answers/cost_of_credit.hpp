// What the credit costs, in the measures of the federal disclosures: finance charge, APR, totals.
//
// A temporary buydown (12 CFR 1026, comments 17(c)(1)-3 to -5): what the buyer puts up is a prepaid
// finance charge, and the payments disclosed are lower by what it pays of them, so that the APR is
// a composite one. What a builder, seller or lender puts up is in no figure here: the note keeps
// its own terms (loan/buydown.hpp). Where both put up money, the buyer's part of each month's
// subsidy is the buyer's part of the whole, to the cent and level through a year: comment
// 17(c)(1)-5 has the "corresponding" payments, from memory; that they are in proportion is our
// convention.
#pragma once

#include <optional>
#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/rate.hpp>
#include <quoin/loan/annual_percentage_rate.hpp>
#include <quoin/loan/loan_figures.hpp>
#include <quoin/loan/scenario_rules.hpp>

namespace quoin {

/// The buyer's own part of a temporary buydown.
struct BuyersBuydown {
    Money put_up;               ///< at closing
    std::vector<Money> monthly; ///< off each payment of the first year, the second ...

    /// 1 for the first payment. Zero past the buydown.
    [[nodiscard]] Money in_month(int month) const;
    [[nodiscard]] Money through(int month) const;
};
/// Empty where there is no buydown or others put up all of it.
[[nodiscard]] BuyersBuydown buyers_buydown(const LoanFigures& figures);

/// Payments of one height, principal and interest.
struct PaymentLevel {
    int from = 1;
    int to = 0; ///< the last, some cents apart, among them
    Money payment;

    friend bool operator==(const PaymentLevel&, const PaymentLevel&) = default;
};

/// What the credit costs, in the measures of 12 CFR 1026.18, 1026.37(l) and 1026.38(o).
struct CostOfCredit {
    /// Points less those that interested parties pay (seller's points are none: 12 CFR
    /// 1026.4(c)(5)), the upfront fee, the buyer's costs that are finance charges, prepaid
    /// interest, the buyer's part of a temporary buydown.
    Money prepaid_finance_charge;
    Money amount_financed; ///< loan less prepaid finance charge
    Money finance_charge;  ///< interest, mortgage insurance and prepaid finance charge
    /// Principal, interest, insurance, loan costs, prepaid interest. Loan costs that the seller
    /// pays are out of it (comment 38(o)(1)-1, from memory: those designated as paid by the
    /// seller).
    Money total_of_payments;
    Percent total_interest_percentage; ///< interest and prepaid interest over the loan, 3 decimals
    /// The "In 5 years" of 1026.37(l)(1): as the total of payments, but points and fees that a
    /// seller pays are still in it. Cash, taxes and the home's insurance are none of it: not
    /// LoanFigures::paid_in_five_years.
    Money disclosed_in_five_years;
    Money disclosed_principal_in_five_years;
    BuyersBuydown buydown;
    std::vector<PaymentLevel> levels; ///< only where the buyer pays towards a buydown
    FirstPeriod first_period;
    std::optional<Rate> apr; ///< to a millionth of a percent
};

/// Principal, interest and mortgage insurance of each month, as the disclosures have them.
[[nodiscard]] std::vector<Money> disclosed_payments(const LoanFigures& figures);
[[nodiscard]] CostOfCredit cost_of_credit(const ScenarioRules& rules, const LoanFigures& figures);

} // namespace quoin
