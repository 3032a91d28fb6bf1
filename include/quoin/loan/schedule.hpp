// A loan's schedule, month by month, in cents.
//
// Interest of a month is rounded half away from zero; the last payment clears the balance. So the
// principal parts sum to the loan, always. Kept as the payment and the balances: every other figure
// of a row follows from two neighbours.
//
//   Schedule s = amortize({loan, rate, term});
//   s.row(1).interest, s.balance(60), s.interest_through(60), s.last_payment()
#pragma once

#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/exact/months.hpp>
#include <quoin/exact/rate.hpp>

namespace quoin {

struct LoanTerms {
    Money loan;
    Rate rate;
    Months term;

    friend bool operator==(const LoanTerms&, const LoanTerms&) = default;
};

struct ScheduleRow {
    int month = 0; ///< 1 for the first payment
    Money payment; ///< interest + principal, extra principal among it
    Money interest;
    Money principal;
    Money balance; ///< after this payment
};

class Schedule {
  public:
    Schedule() = default; ///< of no loan

    [[nodiscard]] const LoanTerms& terms() const { return terms_; }
    [[nodiscard]] Money payment() const { return payment_; } ///< the level payment, without extra
    [[nodiscard]] Money extra() const { return extra_; }     ///< extra principal each month
    /// Payments actually made: the term, or fewer where extra principal or rounding ends it early.
    /// A loan of nothing has none.
    [[nodiscard]] int months() const {
        return balances_.empty() ? 0 : static_cast<int>(balances_.size()) - 1;
    }
    [[nodiscard]] const std::vector<Money>& balances() const { return balances_; } ///< [0] the loan

    /// Balance after payment `month`; 0 gives the loan, past the end gives zero.
    [[nodiscard]] Money balance(int month) const {
        return month < static_cast<int>(balances_.size())
                   ? balances_[static_cast<std::size_t>(month)]
                   : Money{};
    }
    /// Precondition: 1 <= month <= months().
    [[nodiscard]] ScheduleRow row(int month) const;
    /// Principal, interest and extra paid in payments 1 to `month` (all of them past the end).
    [[nodiscard]] Money paid_through(int month) const;
    [[nodiscard]] Money interest_through(int month) const {
        return paid_through(month) - (terms_.loan - balance(month));
    }
    [[nodiscard]] Money total_paid() const { return paid_through(months()); }
    [[nodiscard]] Money total_interest() const { return interest_through(months()); }
    [[nodiscard]] Money last_payment() const { return last_payment_; }

  private:
    friend Schedule amortize(const LoanTerms&, Money payment, Money extra);
    friend struct DamagedSchedule; ///< the tests of check() break one on purpose
    Schedule(const LoanTerms& terms, Money payment, Money extra)
        : terms_(terms), payment_(payment), extra_(extra) {}

    LoanTerms terms_;
    Money payment_;
    Money extra_;
    Money last_payment_;
    std::vector<Money> balances_;
};

/// The schedule under a given payment, with `extra` principal added to each.
/// Precondition: loan >= 0, 1 <= term <= 480, payment and extra >= 0.
[[nodiscard]] Schedule amortize(const LoanTerms& terms, Money payment, Money extra = {});

/// The schedule under the level payment.
[[nodiscard]] Schedule amortize(const LoanTerms& terms);

/// The promise of a schedule, checked in every build where one is made: it starts at the loan and
/// ends at zero, so that principal sums to the loan; the interest within each payment, the last one
/// among them, is balance x rate / 12 rounded half away from zero. Throws Broken otherwise.
void check(const Schedule& schedule);

} // namespace quoin
