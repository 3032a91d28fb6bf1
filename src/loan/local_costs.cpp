// Local taxes, insurance and dues on a home of a given price.
#include <quoin/loan/local_costs.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

constexpr Rounding nearest_cent = Rounding::half_away;

/// A percent of an amount, in whole dollars: rounded once.
Money dollars_of(Money amount, Percent percent) {
    constexpr std::int64_t hundred_percent_in_cents = 100 * 100 * Decimal::one;
    return Money::dollars(multiply_divide(amount.count(), percent.value().billionths(),
                                          hundred_percent_in_cents, Rounding::half_away));
}

/// Exemptions that count in a year of ownership; all of them in the settled years.
Money exempt_amount(const Place& place, Money assessed, bool first_year) {
    Money exempt;
    for (const Exemption& exemption : place.exemptions) {
        if (first_year && exemption.from_year > 1) continue;
        exempt += exemption.amount.value_or(dollars_of(assessed, exemption.percent));
    }
    return std::min(exempt, assessed);
}

PropertyTax tax_on(const Place& place, Money market_value, bool first_year) {
    PropertyTax tax;
    tax.assessed = dollars_of(market_value, place.assessed_percent);
    tax.exempt = exempt_amount(place, tax.assessed, first_year);
    tax.taxable = tax.assessed - tax.exempt;
    ensure(tax.taxable >= Money{}, "exemptions take no more than the assessed value");
    for (const Levy& levy : place.levies) {
        tax.levies += per_thousand_of(tax.taxable, levy.mills, nearest_cent);
    }
    for (const District& district : place.districts) {
        tax.districts +=
            district.yearly.value_or(per_thousand_of(tax.taxable, district.mills, nearest_cent));
    }
    return tax;
}

} // namespace

LocalCosts local_costs(const Place& place, Money price, bool flood_zone) {
    LocalCosts costs;
    costs.settled = tax_on(place, price, false);
    if (place.land_only) {
        costs.land_only = tax_on(place, dollars_of(price, place.land_only->land_percent), true);
        costs.land_only_months = place.land_only->months;
    }
    costs.dwelling_value = dollars_of(price, place.dwelling_percent);
    Case where;
    where.set(Dimension::dwelling_value, costs.dwelling_value);
    where.set(Dimension::price, price);
    costs.premiums = place.premiums;
    if (!flood_zone) costs.premiums[MonthPart::flood_insurance] = {};
    costs.homeowner_row = place.homeowner.row(where);
    if (costs.homeowner_row) {
        costs.premiums[MonthPart::homeowners_insurance] = per_thousand_of(
            costs.dwelling_value, place.homeowner.value(*costs.homeowner_row), nearest_cent);
    }
    for (const Dues& dues : place.dues) costs.dues[dues.part] += dues.monthly;
    return costs;
}

Monthly home_month(const LocalCosts& costs, const PropertyTax& tax) {
    PartAmounts yearly = costs.premiums;
    yearly[MonthPart::property_tax] = tax.levies;
    yearly[MonthPart::district_charges] = tax.districts;
    Monthly month;
    for (const MonthPartRow& row : month_parts) {
        month[row.part] = part_of(yearly[row.part], 12, Rounding::half_away) + costs.dues[row.part];
    }
    return month;
}

} // namespace quoin
