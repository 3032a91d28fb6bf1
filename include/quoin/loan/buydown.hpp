// A temporary buydown: someone else's money pays part of the first years' payments.
//
//   2-1 on 250,000 at 6.5%, 30 years: pays as at 4.5% for a year, as at 5.5% for the next
//   Buydown b = buy_down({loan, rate, term}, {Percent 2, Percent 1});
//   b.years[0].payment, b.years[0].subsidy, b.total_subsidy()
//
// Convention: the payment of a year is the level payment of the original loan over the original
// term at the reduced rate; the subsidy is what it lacks to the note's payment. The note keeps its
// permanent terms (Fannie Mae B2-1.4-04), so the loan runs down as without a buydown. The money is
// put up at closing and earns no interest here.
#pragma once

#include <span>
#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/rate.hpp>
#include <quoin/loan/schedule.hpp>

namespace quoin {

/// Source of both: Fannie Mae B2-1.4-04.
inline constexpr Percent most_buydown{Decimal::whole(3)};
inline constexpr Percent most_yearly_rise{Decimal::whole(1)}; ///< of the rate paid at
/// Source: Freddie Mac 4204.4.
inline constexpr int most_buydown_years = 3;

enum class BuydownProblem {
    no_years,
    too_many_years,
    outlasts_term,          ///< the note's own payment has to come at last
    reduction_not_positive, ///< in some year
    reduction_too_fine,     ///< finer than a rate can be
    reduction_too_large,    ///< over most_buydown
    rate_under_zero,
    rate_falls, ///< a later year is reduced by more
    rate_rises_too_fast,
};
/// What stands against a buydown by `reductions`, percentage points off the note rate in each year
/// from the first; each problem once, in the order above.
[[nodiscard]] std::vector<BuydownProblem> buydown_problems(const LoanTerms& note,
                                                           std::span<const Percent> reductions);

struct BuydownYear {
    Percent reduction;
    Rate rate;     ///< that the payment is figured at
    Money payment; ///< the borrower's, each month
    Money subsidy; ///< each month
};

struct Buydown {
    LoanTerms note;
    Money note_payment;
    std::vector<BuydownYear> years;

    [[nodiscard]] int months() const { return 12 * static_cast<int>(years.size()); }
    /// Off the note's payment; 1 for the first month. Zero past the buydown.
    [[nodiscard]] Money subsidy_in_month(int month) const;
    [[nodiscard]] Money subsidy_through(int month) const;
    /// What has to be put up at closing.
    [[nodiscard]] Money total_subsidy() const { return subsidy_through(months()); }
    /// A borrower qualifies at the note rate (Freddie Mac 4204.4; Fannie Mae from memory).
    [[nodiscard]] Rate qualifying_rate() const { return note.rate; }
};
/// Precondition: no buydown_problems.
[[nodiscard]] Buydown buy_down(const LoanTerms& note, std::span<const Percent> reductions);

} // namespace quoin
