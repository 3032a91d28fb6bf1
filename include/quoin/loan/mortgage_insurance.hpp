// Mortgage insurance that is paid month by month, and the payments that end it.
//
// How much it is each month is the method's of its program (fee_methods.hpp); a lender's is level
// until the Homeowners Protection Act ends it.
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

/// The dates of 12 USC 4901-4902 as payment numbers. The payment that reaches the balance still
/// carries the premium.
struct InsuranceEnd {
    int on_request = 0; ///< first payment after which the balance is <= 80% of value: 4902(a)
    int automatic = 0;  ///< first payment after which the scheduled balance is <= 78%: 4902(b)
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
