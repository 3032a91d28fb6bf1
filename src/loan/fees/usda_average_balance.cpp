// USDA's annual fee: average scheduled unpaid principal of the year x rate, to the cent; / 12, to
// the cent. Source of the base: 7 CFR 3555; that the average is of the balances at the start of
// each month, and the order of rounding, are ours.
#include <algorithm>

#include "year_average.hpp"

namespace quoin {
namespace {

MonthlyPremium charge(const AnnualBasis& of) {
    std::vector<Money> monthly;
    const int months = std::min(of.months, of.schedule.months());
    for (int first = 0; first < months; first += months_a_year) {
        YearAverage in_year;
        const int end = std::min(first + months_a_year, of.schedule.months());
        for (int month = first; month < end; ++month) in_year.add(of.schedule.balance(month));
        monthly.push_back(part_of(in_year.premium(of.yearly), months_a_year, Rounding::half_away));
    }
    return {std::move(monthly), months};
}

/// Balances rise with the loan and with the rate, and so does an average of them; not where the
/// rate changes.
Money least(const LeastAnnualBasis& of) {
    if (!of.is_fixed) return {};
    return charge({of.note, of.base_loan, of.yearly, {}, amortize(of.note), months_a_year})
        .in_month(1);
}

Formula proof(const YearRows& rows) {
    return to_cent(average_premium(ScheduleColumn::balance, rows) / number(months_a_year));
}

} // namespace

const AnnualMethod usda_average_balance{.name = "usda average balance",
                                        .rounding = 16,
                                        .charge = charge,
                                        .least = least,
                                        .proof = proof};

} // namespace quoin
