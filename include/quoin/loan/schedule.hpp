// A loan's schedule, month by month, in cents.
//
// Interest of a month is rounded half away from zero; the last payment clears the balance. So the
// principal parts sum to the loan, always, with what is paid of it at closing. Where the rate
// changes, the payment from then on is level over what is left of the term. Kept as the payments'
// steps and the balances: every other figure of a row follows from two neighbours.
//
//   Schedule s = amortize({loan, rate, term});
//   s.row(1).interest, s.balance(60), s.interest_through(60), s.last_payment()
//   amortize(terms, path)  -> of a rate that changes: loan/adjustable.hpp makes the path
#pragma once

#include <span>
#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/exact/months.hpp>
#include <quoin/exact/rate.hpp>

namespace quoin {

struct LoanTerms {
    Money loan;
    Rate rate; ///< where it changes, the initial one
    Months term;

    friend bool operator==(const LoanTerms&, const LoanTerms&) = default;
};

struct RateStep {
    int from_payment = 1; ///< the first at this rate
    Rate rate;

    friend bool operator==(const RateStep&, const RateStep&) = default;
};

/// A step of the rate and the level payment that goes with it.
struct PaymentStep {
    int from_payment = 1;
    Rate rate;
    Money payment; ///< without extra principal

    friend bool operator==(const PaymentStep&, const PaymentStep&) = default;
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
    /// One where the rate is fixed. A loan paid off early has only those it came to.
    [[nodiscard]] const std::vector<PaymentStep>& steps() const { return steps_; }
    [[nodiscard]] const PaymentStep& step(int month) const; ///< in force at payment `month`
    [[nodiscard]] Money payment() const { ///< the first level payment, without extra
        return steps_.empty() ? Money{} : steps_.front().payment;
    }
    [[nodiscard]] Money largest_payment() const;         ///< of the steps
    [[nodiscard]] Money extra() const { return extra_; } ///< extra principal each month
    /// Principal paid at closing: the note and its first payment are the whole loan's.
    [[nodiscard]] Money at_closing() const { return at_closing_; }
    /// Payments actually made: the term, or fewer where extra principal or rounding ends it early.
    /// A loan of nothing has none.
    [[nodiscard]] int months() const {
        return balances_.empty() ? 0 : static_cast<int>(balances_.size()) - 1;
    }
    /// [0] the loan, less what is paid at closing.
    [[nodiscard]] const std::vector<Money>& balances() const { return balances_; }

    /// Balance after payment `month`; 0 gives that before the first, past the end gives zero.
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
        return paid_through(month) - (balance(0) - balance(month));
    }
    [[nodiscard]] Money total_paid() const { return paid_through(months()); }
    [[nodiscard]] Money total_interest() const { return interest_through(months()); }
    [[nodiscard]] Money last_payment() const { return last_payment_; }
    [[nodiscard]] std::vector<Money> payments() const; ///< each in order, extra among them

  private:
    friend class ScheduleRun;
    friend struct DamagedSchedule; ///< the tests of check() break one on purpose

    LoanTerms terms_;
    Money extra_;
    Money at_closing_;
    Money last_payment_;
    std::vector<PaymentStep> steps_;
    std::vector<Money> balances_;
};

/// The schedule under a given payment, with `extra` principal added to each, and principal paid
/// `at_closing` before the first.
/// Precondition: loan >= 0, 1 <= term <= 480, payment and extra >= 0, 0 <= at_closing <= loan.
[[nodiscard]] Schedule amortize(const LoanTerms& terms, Money payment, Money extra = {},
                                Money at_closing = {});

/// The schedule under the level payment.
[[nodiscard]] Schedule amortize(const LoanTerms& terms);

/// The schedule of a rate that changes; the rate of `terms` is not looked at, the path's first is.
/// Precondition: a path from payment 1 on, rising within the term.
[[nodiscard]] Schedule amortize(const LoanTerms& terms, std::span<const RateStep> path,
                                Money extra = {}, Money at_closing = {});

/// The same loan with other extra principal; where the rate changes, so does the payment.
[[nodiscard]] Schedule with_extra(const Schedule& schedule, Money extra);

/// The promise of a schedule, checked in every build where one is made: it starts at the loan less
/// what is paid at closing and ends at zero, so that principal sums to the loan; the interest
/// within each payment, the last one among them, is balance x rate / 12 rounded half away from
/// zero. Throws Broken otherwise.
void check(const Schedule& schedule);

} // namespace quoin
