// What a place adds to owning a home of a given price: taxes, districts, insurance, dues.
//
// Rounding, in order: land, dwelling and assessed values to the dollar; exemptions by percent to
// the dollar; each levy, district and premium to the cent; each part of a month to the cent, all
// half away from zero.
#pragma once

#include <optional>

#include <quoin/exact/money.hpp>
#include <quoin/lending/place.hpp>
#include <quoin/loan/monthly.hpp>

namespace quoin {

struct PropertyTax {
    Money assessed;
    Money exempt;
    Money taxable;
    Money levies;    ///< a year
    Money districts; ///< a year
};

struct LocalCosts {
    PropertyTax settled;
    std::optional<PropertyTax> land_only; ///< while bills are on the land alone
    int land_only_months = 0;
    Money dwelling_value;
    std::optional<int> homeowner_row; ///< of the place's table; nothing: no row for this value
    PartAmounts premiums;             ///< a year
    PartAmounts dues;                 ///< a month
};

[[nodiscard]] LocalCosts local_costs(const Place& place, Money price, bool flood_zone);

/// The parts of a month that the home takes, under one of its taxes.
[[nodiscard]] Monthly home_month(const LocalCosts& costs, const PropertyTax& tax);

} // namespace quoin
