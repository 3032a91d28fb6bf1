// What closing costs come to on a loan and a price. Each is rounded half away from zero to the
// cent.
#pragma once

#include <quoin/exact/money.hpp>
#include <quoin/lending/place.hpp>

namespace quoin {

[[nodiscard]] Money amount_of(const ClosingCost& cost, Money loan, Money price);

/// The sum of those the buyer pays.
[[nodiscard]] Money buyers_closing_costs(const Place& place, Money loan, Money price);

/// The sum of those the buyer pays that are finance charges (12 CFR 1026.4).
[[nodiscard]] Money finance_charges(const Place& place, Money loan, Money price);

} // namespace quoin
