// Adjustable-rate loans: the rate along an index, the worst case, and the schedule of either.
//
//   5/6, margin 2.75, caps 2/1/5: AdjustableTerms{Months(60), Months(6), index, margin, caps, {}}
//   rate_path(loan, terms, indexes)   -> the rate from payment 1, from payment 61 ...
//   worst_case_path(loan, terms)      -> every change as high as the caps let it be
//   composite_path(loan, terms)       -> what the APR is figured on
//   amortize(loan, path)              -> payments and balances, to the cent
//
// A rate that changes after 60 months is first paid with payment 61. A new rate is index + margin
// to the nearest 1/8 percent, an exact tie down; then the floor; then the caps, which go first
// where they disagree with the floor. A new payment is level over what is left of the term.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/exact/months.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/rate.hpp>
#include <quoin/loan/schedule.hpp>

namespace quoin {

/// In percentage points, as in "2/1/5".
struct RateCaps {
    Percent first;    ///< up or down from the initial rate, at the first change
    Percent periodic; ///< up or down from the rate before, at each later change
    Percent life;     ///< above the initial rate, ever

    friend bool operator==(const RateCaps&, const RateCaps&) = default;
};

/// What an adjustable loan has besides LoanTerms, whose rate is the initial one.
struct AdjustableTerms {
    Months initial; ///< months at the initial rate
    Months reset;   ///< between later changes
    Percent index;  ///< at consummation; may be negative
    Percent margin;
    RateCaps caps;
    std::optional<Percent> floor; ///< the margin where none is given (Fannie Mae B2-1.4-02)

    [[nodiscard]] Percent lowest() const { return floor.value_or(margin); }

    friend bool operator==(const AdjustableTerms&, const AdjustableTerms&) = default;
};

enum class AdjustableProblem {
    initial_not_positive,
    initial_not_under_term,
    reset_not_positive,
    negative_margin,
    negative_floor,
    negative_first_cap,
    negative_periodic_cap,
    negative_life_cap,
    value_too_fine,      ///< margin, floor or a cap is finer than a rate can be
    ceiling_under_floor, ///< initial rate + life cap is below the floor, or the margin
    ceiling_too_high,    ///< above 100 %
};
/// Each problem once, in the order above.
[[nodiscard]] std::vector<AdjustableProblem> adjustable_problems(const LoanTerms& loan,
                                                                 const AdjustableTerms& terms);

/// To the nearest 1/8 percent, an exact tie down: 6.0625 -> 6, 6.0626 -> 6.125.
[[nodiscard]] Percent to_nearest_eighth(Percent value);
/// Index + margin to the nearest eighth, and not under the floor; caps aside.
[[nodiscard]] Rate fully_indexed_rate(const AdjustableTerms& terms, Percent index);
/// The initial rate and the life cap.
[[nodiscard]] Rate ceiling_rate(const LoanTerms& loan, const AdjustableTerms& terms);

struct RateStep {
    int from_payment = 1; ///< the first at this rate
    Rate rate;

    friend bool operator==(const RateStep&, const RateStep&) = default;
};
/// The initial rate, then each rate that differs from the one before. `indexes` holds the index of
/// each change in order; the last stands for all later ones. Preconditions of the three: no
/// adjustable_problems; at least one index.
[[nodiscard]] std::vector<RateStep> rate_path(const LoanTerms& loan, const AdjustableTerms& terms,
                                              std::span<const Percent> indexes);
/// Each change by the whole of its cap, up to the ceiling.
[[nodiscard]] std::vector<RateStep> worst_case_path(const LoanTerms& loan,
                                                    const AdjustableTerms& terms);
/// The initial rate for its term, then the fully indexed rate of consummation, in as many changes
/// as the caps make of it: comment 17(c)(1)-10 to 12 CFR 1026.
[[nodiscard]] std::vector<RateStep> composite_path(const LoanTerms& loan,
                                                   const AdjustableTerms& terms);

/// A step of the path and the level payment that goes with it.
struct PaymentStep {
    int from_payment = 1;
    Rate rate;
    Money payment;

    friend bool operator==(const PaymentStep&, const PaymentStep&) = default;
};

/// A schedule whose rate changes. Interest of a month is rounded half away from zero to the cent;
/// the last payment clears the balance.
class AdjustableSchedule {
  public:
    /// Preconditions: those of amortize(LoanTerms); a path from payment 1 on, in order.
    /// The rate of `loan` is not looked at: the path's first is.
    AdjustableSchedule(const LoanTerms& loan, std::span<const RateStep> path);

    [[nodiscard]] const std::vector<PaymentStep>& steps() const { return steps_; }
    /// Payments actually made: the term, or fewer where rounding ends it early.
    [[nodiscard]] int months() const { return static_cast<int>(balances_.size()) - 1; }
    [[nodiscard]] const std::vector<Money>& balances() const { return balances_; } ///< [0] the loan
    /// Balance after payment `month`; 0 gives the loan, past the end gives zero.
    [[nodiscard]] Money balance(int month) const;
    [[nodiscard]] const PaymentStep& step(int month) const; ///< in force at payment `month`
    /// Precondition: 1 <= month <= months().
    [[nodiscard]] ScheduleRow row(int month) const;
    /// Every payment in order, as annual_percentage_rate takes them.
    [[nodiscard]] std::vector<Money> payments() const;
    [[nodiscard]] Money largest_payment() const; ///< of the steps
    [[nodiscard]] Money total_interest() const;

  private:
    void run(const PaymentStep& step, int last, bool ends);
    void check() const;

    std::vector<PaymentStep> steps_;
    std::vector<Money> balances_;
};
[[nodiscard]] AdjustableSchedule amortize(const LoanTerms& loan, std::span<const RateStep> path);

} // namespace quoin
