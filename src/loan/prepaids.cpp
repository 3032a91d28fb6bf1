// Prepaid interest, premiums and tax bills.
#include <quoin/loan/prepaids.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

/// Whether a bill is on the land alone: in the first months of ownership.
bool is_on_land(const LocalCosts& costs, Date closing, Date due) {
    return costs.land_only && due < plus_months(closing, Months(costs.land_only_months));
}

/// Tax bills by their days, each its share of the year, half away to the cent.
void add_tax(const Place& place, const LocalCosts& costs, Date closing, Date from, Date to,
             bool settled, std::vector<HousingBill>& bills) {
    for (int year = from.year(); year <= to.year(); ++year) {
        for (const TaxDue& day : place.tax_due) {
            const auto due = Date::of(year, day.month, day.day);
            if (!due || *due < from || *due >= to) continue;
            const bool on_land = !settled && is_on_land(costs, closing, *due);
            const PropertyTax& tax = on_land ? *costs.land_only : costs.settled;
            bills.push_back({MonthPart::property_tax, *due,
                             percent_of(tax.levies + tax.districts, day.share, Rounding::half_away),
                             day.share, on_land});
        }
    }
}

void add_renewals(MonthPart part, Money yearly, const Place& place, Date closing, Date from,
                  Date to, std::vector<HousingBill>& bills) {
    if (yearly.is_zero()) return;
    int months = place.escrow.prepaid_insurance_months;
    for (Date due = plus_months(closing, Months(months)); due < to;
         due = plus_months(closing, Months(months += 12))) {
        if (due >= from) bills.push_back({part, due, yearly});
    }
}

} // namespace

Date first_payment_date(Date closing) { return plus_months(first_of_month(closing), Months(2)); }

PrepaidInterest prepaid_interest(Money loan, Rate rate, Date closing, int year_days) {
    ensure(year_days == 360 || year_days == 365,
           "a day's interest is of a year of 360 or 365 days");
    const std::int64_t denominator = Rate::monthly_denominator / 12 * year_days;
    const Money per_day = Money::cents(
        multiply_divide(loan.count(), rate.millionths(), denominator, Rounding::half_away));
    const int days = days_between(closing, plus_months(first_of_month(closing), Months(1)));
    ensure(1 <= days && days <= 31, "interest is prepaid for the closing's month");
    return {per_day, days};
}

std::vector<HousingBill> housing_bills(const Place& place, const LocalCosts& costs, Date closing,
                                       Date from, Date to, bool settled) {
    ensure(from <= to, "bills fall due from a day to a later one");
    std::vector<HousingBill> bills;
    add_tax(place, costs, closing, from, to, settled, bills);
    for (const MonthPartRow& row : parts_from<PartSource::insurance>) {
        add_renewals(row.part, costs.premiums[row.part], place, closing, from, to, bills);
    }
    std::stable_sort(bills.begin(), bills.end(),
                     [](const HousingBill& a, const HousingBill& b) { return a.due < b.due; });
    return bills;
}

Prepaids prepaids(const Place& place, const LocalCosts& costs, Date closing) {
    Prepaids prepaid;
    prepaid.insurance = part_of(costs.premiums.total() * place.escrow.prepaid_insurance_months, 12,
                                Rounding::half_away);
    for (const HousingBill& bill :
         housing_bills(place, costs, closing, closing, first_payment_date(closing), false)) {
        if (bill.is_tax()) prepaid.tax += bill.amount;
    }
    return prepaid;
}

} // namespace quoin
