// How long mortgage insurance is paid and how much it is each month, by the rule of its program.
//
//   FHA           the average of a year's twelve beginning-of-month balances x the annual premium,
//                 less the part for a financed upfront premium, over twelve; falls every year
//   USDA          the average scheduled balance of a year x the annual fee, over twelve
//   conventional  a level factor of the base loan until the Homeowners Protection Act ends it
#pragma once

#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/loan/schedule.hpp>

namespace quoin {

/// A premium that is paid monthly: `yearly[k]` is the monthly amount of loan year k+1.
class MonthlyPremium {
  public:
    MonthlyPremium() = default;
    /// `yearly` one monthly amount a loan year; the last stands for all later years.
    MonthlyPremium(std::vector<Money> yearly, int months);

    [[nodiscard]] int months() const { return months_; } ///< payments that carry it
    [[nodiscard]] Money in_month(int month) const;       ///< 1 for the first payment
    [[nodiscard]] Money paid_through(int month) const;
    /// The same, at most through payment `last`: none is paid on a loan that has ended.
    [[nodiscard]] MonthlyPremium ended_by(int last) const;

  private:
    std::vector<Money> yearly_;
    int months_ = 0;
};

/// HUD's annual premium, per 24 CFR 203.261 and HUD's premium calculation: average of the
/// beginning-of-month balances of the year x rate, to the cent; / (1 + upfront percent if
/// financed), to the cent; / 12, to the cent. `upfront_financed` is zero where it was paid in cash.
/// HUD runs the level payment of the total loan by its own interest: balance x percent to the cent,
/// / 1200 to the cent. Ends with the loan where `duration` is longer.
[[nodiscard]] MonthlyPremium hud_annual_premium(const LoanTerms& total_loan, Percent annual,
                                                Percent upfront_financed, Months duration);

/// USDA's annual fee: average scheduled unpaid principal of the year x rate, to the cent; / 12, to
/// the cent. Source of the base: 7 CFR 3555; that the average is of the balances at the start of
/// each month, and the order of rounding, are ours.
[[nodiscard]] MonthlyPremium usda_annual_fee(const Schedule& schedule, Percent annual,
                                             Months duration);

/// A lender's factor of the base loan, level: loan x factor / 12, to the cent.
[[nodiscard]] MonthlyPremium level_premium(Money loan, Percent annual, int months);

/// The dates of 12 USC 4901-4902 as payment numbers. The payment that reaches the balance still
/// carries the premium.
struct InsuranceEnd {
    int on_request = 0; ///< first payment after which the balance is <= 80 % of value: 4902(a)
    int automatic = 0;  ///< first payment after which the scheduled balance is <= 78 %: 4902(b)
    int midpoint = 0;   ///< half of the amortization period, an odd month counted in: 4902(c)
    /// The last payment that carries the premium without a request: automatic, or the midpoint.
    [[nodiscard]] int last_automatic() const { return automatic < midpoint ? automatic : midpoint; }
    /// The last one with a request, which nobody needs past the midpoint.
    [[nodiscard]] int last_on_request() const {
        return on_request < midpoint ? on_request : midpoint;
    }
};
/// `value` is the lesser of contract price and appraised value. A balance that the loan starts at
/// or under is reached at payment 0. A request follows the balance as it is `paid` down (4902(a),
/// 4901(2): on actual payments); the automatic end stays on the `initial` schedule (4902(b),
/// 4901(18)).
[[nodiscard]] InsuranceEnd insurance_end(const Schedule& initial, const Schedule& paid,
                                         Money value);
[[nodiscard]] inline InsuranceEnd insurance_end(const Schedule& initial, Money value) {
    return insurance_end(initial, initial, value);
}

} // namespace quoin
