// Bills by their days: each edge of a stretch of days belongs to one side alone.
#include <shown.hpp>

#include <string>
#include <vector>

#include <quoin/loan/prepaids.hpp>

using namespace quoin;

namespace {

Date date(const char* text) { return Date::parse(text).value(); }

/// Tax in two bills, each half of the year: one on the day of the closing below, one on the day of
/// its first payment, a year apart from the next of their kind.
Place taxed() {
    Place place;
    place.tax_due = {{3, 15, Percent(Decimal::whole(50))}, {5, 1, Percent(Decimal::whole(50))}};
    return place;
}
const Date closing = *Date::of(2027, 3, 15); // the first payment is on 2027-05-01

LocalCosts costs_of(std::int64_t settled, std::int64_t insurance = 0) {
    LocalCosts costs;
    costs.settled.levies = Money::dollars(settled);
    costs.premiums[MonthPart::homeowners_insurance] = Money::dollars(insurance);
    return costs;
}

using Days = std::vector<std::string>;

Days days_of(const std::vector<HousingBill>& bills) {
    Days days;
    for (const HousingBill& bill : bills) days.push_back(bill.due.text());
    return days;
}

Days taxes(const char* from, const char* to) {
    return days_of(housing_bills(taxed(), costs_of(2000), closing, date(from), date(to), false));
}

Days premiums(const char* from, const char* to) {
    return days_of(housing_bills(Place{}, costs_of(0, 900), closing, date(from), date(to), false));
}

} // namespace

TEST_CASE("A tax bill due on the first day counts, one due on the day after the last does not") {
    CHECK(taxes("2027-03-15", "2027-05-01") == Days{"2027-03-15"});
    CHECK(taxes("2027-03-16", "2027-05-01").empty());
    CHECK(taxes("2027-03-16", "2027-05-02") == Days{"2027-05-01"});
    CHECK(taxes("2027-05-01", "2028-03-15") == Days{"2027-05-01"});
    CHECK(taxes("2027-05-01", "2028-03-16") == (Days{"2027-05-01", "2028-03-15"}));
}

TEST_CASE("A tax bill of the closing's day is prepaid, one of the first payment's day is not") {
    REQUIRE(first_payment_date(closing) == date("2027-05-01"));
    CHECK(prepaids(taxed(), costs_of(2000), closing).tax == Money::dollars(1000));
    CHECK(prepaids(taxed(), costs_of(2000), plus_days(closing, 1)).tax == Money{});
    // Closed in April, the first payment is in June: the bill of 1 May is prepaid in its place.
    CHECK(prepaids(taxed(), costs_of(3000), date("2027-04-30")).tax == Money::dollars(1500));
}

TEST_CASE("Stretches that meet have each tax bill and premium once") {
    const char* const days[] = {"2027-03-15", "2027-03-16", "2027-05-01", "2028-02-01",
                                "2028-03-15", "2028-05-01", "2029-03-15", "2029-05-02"};
    Days tax;
    Days insurance;
    for (std::size_t i = 0; i + 1 < std::size(days); ++i) {
        for (const std::string& day : taxes(days[i], days[i + 1])) tax.push_back(day);
        for (const std::string& day : premiums(days[i], days[i + 1])) insurance.push_back(day);
    }
    CHECK(tax == taxes(days[0], days[std::size(days) - 1]));
    CHECK(tax == (Days{"2027-03-15", "2027-05-01", "2028-03-15", "2028-05-01", "2029-03-15",
                       "2029-05-01"}));
    CHECK(insurance == (Days{"2028-03-15", "2029-03-15"}));
}

TEST_CASE("Insurance renews on the closing's day, the first time after what was prepaid") {
    CHECK(premiums("2027-03-15", "2028-03-15").empty());
    CHECK(premiums("2027-03-15", "2028-03-16") == Days{"2028-03-15"});
    CHECK(premiums("2028-03-15", "2029-03-15") == Days{"2028-03-15"});
    CHECK(premiums("2028-03-16", "2029-03-15").empty());
}

TEST_CASE("A policy paid for two months or more renews no earlier than the first payment") {
    for (int day = 0; day < 1461; ++day) { // four years, one of them a leap year
        const Date closes = plus_days(closing, day);
        CAPTURE(closes);
        REQUIRE(plus_months(closes, Months(2)) >= first_payment_date(closes));
    }
}

TEST_CASE("Tax is on the land alone until the day on which its months end") {
    LocalCosts costs = costs_of(2000);
    costs.land_only = PropertyTax{};
    costs.land_only->levies = Money::dollars(400);
    costs.land_only_months = 12; // through 2028-03-14
    const auto bills = [&](bool settled) {
        return housing_bills(taxed(), costs, closing, closing, date("2028-05-02"), settled);
    };
    std::vector<Money> amounts;
    for (const HousingBill& bill : bills(false)) amounts.push_back(bill.amount);
    CHECK(amounts == std::vector<Money>{Money::dollars(200), Money::dollars(200),
                                        Money::dollars(1000), Money::dollars(1000)});
    for (const HousingBill& bill : bills(true)) CHECK(bill.amount == Money::dollars(1000));
}
