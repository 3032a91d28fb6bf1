// What is paid at closing for time after it: interest to the month's end, the first insurance
// premium, and tax bills that fall due before the first payment.
//
// Interest of a day is loan x rate / 360 (or 365, as the sheet says), half away to the cent, then
// times the days from the closing to the first of the next month, the closing day among them.
// Source of the order: sample forms H-24(B) and H-25(B) of 12 CFR 1026: 17.44 a day, 16 days,
// 279.04.
#pragma once

#include <vector>

#include <quoin/exact/date.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/rate.hpp>
#include <quoin/lending/place.hpp>
#include <quoin/loan/local_costs.hpp>

namespace quoin {

/// First payment: the first day of the second month after closing (common practice, no source).
[[nodiscard]] Date first_payment_date(Date closing);

struct PrepaidInterest {
    Money per_day;
    int days = 0;

    [[nodiscard]] Money total() const { return per_day * days; }
};
[[nodiscard]] PrepaidInterest prepaid_interest(Money loan, Rate rate, Date closing, int year_days);

/// A bill that the escrow account, or the buyer at closing, pays.
struct HousingBill {
    MonthPart part = MonthPart::property_tax; ///< the tax, district charges with it; or insurance
    Date due;
    Money amount;
    Percent share = {};   ///< of the year's tax, where it is a tax bill
    bool on_land = false; ///< a tax bill of the first months, on the land alone

    [[nodiscard]] bool is_tax() const { return part == MonthPart::property_tax; }
};

/// Property-tax and insurance bills due from `from` (included) to `to` (not included). Tax bills of
/// the first months are on land alone where the place says so; insurance renews on the closing's
/// day, `prepaid_insurance_months` after it and every year from there. `settled` takes the settled
/// tax throughout.
[[nodiscard]] std::vector<HousingBill> housing_bills(const Place& place, const LocalCosts& costs,
                                                     Date closing, Date from, Date to,
                                                     bool settled);

/// What is prepaid at closing besides interest.
struct Prepaids {
    Money insurance; ///< months of every premium
    Money tax;       ///< bills due before the first payment

    [[nodiscard]] Money total() const { return insurance + tax; }
};
[[nodiscard]] Prepaids prepaids(const Place& place, const LocalCosts& costs, Date closing);

} // namespace quoin
