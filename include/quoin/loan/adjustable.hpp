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

#include <quoin/exact/months.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/rate.hpp>
#include <quoin/lending/adjustable_plan.hpp>
#include <quoin/loan/schedule.hpp>

namespace quoin {

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
    ceiling_too_high,    ///< above 100%
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

} // namespace quoin
