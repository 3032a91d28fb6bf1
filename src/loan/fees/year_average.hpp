// The average of the balances at the start of the months of a loan year, times a yearly percent.
#pragma once

#include <quoin/loan/formula.hpp>

#include "table.hpp"

namespace quoin {

struct YearAverage {
    Money sum;
    int months = 0; ///< twelve, or what is left of the loan

    void add(Money balance) {
        sum += balance;
        ++months;
    }
    /// Average x yearly percent, to the cent.
    [[nodiscard]] Money premium(Percent annual) const {
        return Money::cents(multiply_divide(sum.count(), annual.value().billionths(),
                                            months * 100 * Decimal::one, Rounding::half_away));
    }
};

/// The same as a formula; without a loan there are no balances.
[[nodiscard]] inline Formula average_premium(ScheduleColumn column, const YearRows& rows) {
    const int months = rows.last - rows.first + 1;
    if (months == 0) return number(0);
    const Formula average = column_sum(column, rows.first, rows.last) / number(months);
    return to_cent(percent_of(average, figure("annual_percent")));
}

} // namespace quoin
