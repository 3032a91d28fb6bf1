// Monthly: a month's figure by its parts.
//
//   f.monthly[MonthPart::property_tax]
//   f.monthly.total()
#pragma once

#include <quoin/lending/month_part.hpp>

namespace quoin {

struct Monthly : PartAmounts {
    [[nodiscard]] constexpr Money from(PartSource source) const {
        Money sum;
        for (const MonthPartRow& row : month_parts) {
            if (row.from == source) sum += (*this)[row.part];
        }
        return sum;
    }
    /// What of it the home takes and not the loan.
    [[nodiscard]] constexpr Money local() const { return total() - from(PartSource::loan); }

    friend constexpr bool operator==(const Monthly&, const Monthly&) = default;
    friend constexpr Monthly operator-(Monthly a, const Monthly& b) {
        for (const MonthPartRow& row : month_parts) a[row.part] -= b[row.part];
        return a;
    }
};

} // namespace quoin
