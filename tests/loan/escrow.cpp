// Escrow: Appendix E cell by cell, the sample Closing Disclosure, and the step after a first year.
#include <shown.hpp>

#include <algorithm>
#include <string>
#include <vector>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/escrow.hpp>

#include "seeded.hpp"

using namespace quoin;

namespace {

using Bills = std::vector<EscrowBill>;

Date date(const char* text) { return Date::parse(text).value(); }
Money money(const char* text) { return Money::parse(text).value(); }

/// Source: 12 CFR 1024, Appendix E: settlement 15 May, first payment 1 July, cushion one sixth.
/// The appendix names no year.
const Date july = *Date::of(2026, 7, 1);
const EscrowBill school{MonthPart::district_charges, Money::dollars(360), *Date::of(2026, 9, 20)};
const EscrowBill county_july{MonthPart::property_tax, Money::dollars(500), *Date::of(2026, 7, 25)};
const EscrowBill county_december{MonthPart::property_tax, Money::dollars(700),
                                 *Date::of(2026, 12, 10)};
const Bills school_bills{school};
const Bills county_bills{county_july, county_december};
const Bills all_bills{school, county_july, county_december};

/// The columns of Appendix E: balances in dollars at the end of June, July and so on to June.
struct Column {
    const char* what;
    Bills bills;
    std::int64_t monthly;
    int cushion_months; ///< no_start: step 1, from nothing
    std::vector<std::int64_t> balances;
};
constexpr int no_start = -1;

/// Source: 12 CFR 1024, Appendix E, parts I and II, steps 1 to 3.
const Column appendix_e[] = {
    {"aggregate, step 1",
     all_bills,
     130,
     no_start,
     {0, -370, -240, -470, -340, -210, -780, -650, -520, -390, -260, -130, 0}},
    {"aggregate, step 2",
     all_bills,
     130,
     0,
     {780, 410, 540, 310, 440, 570, 0, 130, 260, 390, 520, 650, 780}},
    {"aggregate, step 3",
     all_bills,
     130,
     2,
     {1040, 670, 800, 570, 700, 830, 260, 390, 520, 650, 780, 910, 1040}},
    {"taxes, step 1",
     county_bills,
     100,
     no_start,
     {0, -400, -300, -200, -100, 0, -600, -500, -400, -300, -200, -100, 0}},
    {"taxes, step 2",
     county_bills,
     100,
     0,
     {600, 200, 300, 400, 500, 600, 0, 100, 200, 300, 400, 500, 600}},
    {"taxes, step 3",
     county_bills,
     100,
     2,
     {800, 400, 500, 600, 700, 800, 200, 300, 400, 500, 600, 700, 800}},
    {"school taxes, step 1",
     school_bills,
     30,
     no_start,
     {0, 30, 60, -270, -240, -210, -180, -150, -120, -90, -60, -30, 0}},
    {"school taxes, step 2",
     school_bills,
     30,
     0,
     {270, 300, 330, 0, 30, 60, 90, 120, 150, 180, 210, 240, 270}},
    {"school taxes, step 3",
     school_bills,
     30,
     2,
     {330, 360, 390, 60, 90, 120, 150, 180, 210, 240, 270, 300, 330}},
};

Money paid_in(const Bills& bills, Date month) {
    Money paid;
    for (const EscrowBill& bill : bills) {
        if (first_of_month(bill.due) == month) paid += bill.amount;
    }
    return paid;
}

/// Bills of one to four items within the year of a first payment in July 2026.
Bills any_bills(Seeded& seeded, std::int64_t most_cents) {
    const MonthPart items[] = {MonthPart::property_tax, MonthPart::homeowners_insurance,
                               MonthPart::flood_insurance, MonthPart::district_charges};
    Bills bills;
    for (auto count = seeded.between(1, 6); count > 0; --count) {
        const auto month = static_cast<int>(seeded.between(0, 11));
        const auto day = static_cast<int>(seeded.between(0, 27));
        bills.push_back({items[seeded.between(0, 3)], Money::cents(seeded.between(0, most_cents)),
                         plus_days(plus_months(july, Months(month)), day)});
    }
    return bills;
}

EscrowYear as_set(const EscrowAccount& account) {
    return {account.first_payment, account.initial_deposit, account.deposit,
            account.cushion_months};
}

} // namespace

TEST_CASE("Every cell of Appendix E") {
    for (const Column& column : appendix_e) {
        CAPTURE(column.what);
        const Money monthly = Money::dollars(column.monthly);
        const auto months = column.cushion_months == no_start
                                ? escrow_trial_balance(column.bills, july, {}, monthly)
                                : analyse_escrow(column.bills, july, column.cushion_months).months;
        REQUIRE(months.size() == column.balances.size());
        for (std::size_t i = 0; i < months.size(); ++i) {
            CAPTURE(i);
            const Date month = plus_months(date("2026-06-01"), Months(static_cast<int>(i)));
            CHECK(months[i].month == month);
            CHECK(months[i].balance == Money::dollars(column.balances[i]));
            CHECK(months[i].paid == paid_in(column.bills, month));
            CHECK(months[i].deposit == (i == 0 ? months[0].balance : monthly));
        }
    }
}

TEST_CASE("The account of Appendix E") {
    const EscrowAccount account = analyse_escrow(all_bills, july, 2);
    CHECK(account.yearly == Money::dollars(1560));
    CHECK(account.deposit == Money::dollars(130));
    CHECK(account.cushion == Money::dollars(260));
    CHECK(account.initial_deposit == Money::dollars(1040));
    CHECK(account.lowest == 6); // December
}

TEST_CASE("The account of Appendix E, item by item") {
    // Source: Appendix E, part II, step 3: 800 and 330 to start with; as months of 100 and 30 they
    // are 8 and 11. 1040 - 800 - 330 = -90 is the difference of its two parts.
    const ItemisedEscrow itemised = itemise(analyse_escrow(all_bills, july, 2), all_bills);
    REQUIRE(itemised.lines.size() == 2);
    CHECK(itemised.lines[0].item == MonthPart::district_charges);
    CHECK(itemised.lines[0].months == 11);
    CHECK(itemised.lines[0].monthly == Money::dollars(30));
    CHECK(itemised.lines[0].total() == Money::dollars(330));
    CHECK(itemised.lines[1].item == MonthPart::property_tax);
    CHECK(itemised.lines[1].months == 8);
    CHECK(itemised.lines[1].total() == Money::dollars(800));
    CHECK(itemised.adjustment == Money::dollars(-90));
}

TEST_CASE("Section G of the sample Closing Disclosure") {
    // Source: 12 CFR 1026, sample form H-25(B): 2 months of 100.83 and of 105.30, adjustment
    // -0.01, in all 412.25; 2,473.56 a year, 206.13 a month.
    const std::vector<EscrowLine> lines{{MonthPart::homeowners_insurance, 2, money("100.83")},
                                        {MonthPart::property_tax, 2, money("105.30")}};
    CHECK(lines[0].total() == money("201.66"));
    CHECK(lines[1].total() == money("210.60"));
    CHECK(aggregate_adjustment(lines, money("412.25")) == money("-0.01"));

    // The sample prints no due days. Bills that leave nothing in the account at the year's end ask
    // for the cushion alone, and the cap on it is a sixth of 2,473.56 = 412.26, a cent above what
    // the sample collects.
    const Bills bills{{MonthPart::homeowners_insurance, money("1209.96"), date("2014-05-15")},
                      {MonthPart::property_tax, money("631.80"), date("2013-11-15")},
                      {MonthPart::property_tax, money("631.80"), date("2014-05-15")}};
    const EscrowAccount account = analyse_escrow(bills, date("2013-06-01"), 2);
    CHECK(account.yearly == money("2473.56"));
    CHECK(account.deposit == money("206.13"));
    CHECK(account.cushion == money("412.26"));
    CHECK(account.initial_deposit == money("412.26"));
    const ItemisedEscrow itemised = itemise(account, bills);
    REQUIRE(itemised.lines.size() == 2);
    CHECK(itemised.lines[0].total() == money("201.66"));
    CHECK(itemised.lines[1].total() == money("210.60"));
    CHECK(itemised.adjustment == Money{});
}

TEST_CASE("Cents of rounding never make an adjustment that raises") {
    // 1000.01 / 12 = 83.33: twelve deposits lack five cents, which two months of 83.33 do not hold.
    const Bills bills{{MonthPart::property_tax, money("1000.01"), date("2027-06-10")}};
    const EscrowAccount account = analyse_escrow(bills, july, 2);
    CHECK(account.deposit == money("83.33"));
    CHECK(account.cushion == money("166.66"));
    CHECK(account.initial_deposit == money("166.71"));
    const ItemisedEscrow itemised = itemise(account, bills);
    REQUIRE(itemised.lines.size() == 1);
    CHECK(itemised.lines[0].months == 3);
    CHECK(itemised.adjustment == money("-83.28"));
}

TEST_CASE("A cushion is a most: cut to the cent") {
    const Bills bills{{MonthPart::property_tax, money("1000.03"), date("2027-06-10")}};
    CHECK(analyse_escrow(bills, july, 2).cushion == money("166.67")); // 166.6716...
    CHECK(analyse_escrow(bills, july, 1).cushion == money("83.33"));  // 83.3358...
    CHECK(analyse_escrow(bills, july, 1).deposit == money("83.34"));
    CHECK(analyse_escrow(bills, july, 0).cushion == Money{});
}

TEST_CASE("An account without bills stays empty") {
    const EscrowAccount account = analyse_escrow({}, july, 2);
    CHECK(account.initial_deposit == Money{});
    CHECK(account.deposit == Money{});
    CHECK(account.lowest == 0);
    CHECK(account.months.size() == 13);
    CHECK(itemise(account, {}).lines.empty());
    CHECK(itemise(account, {}).adjustment == Money{});
}

TEST_CASE("A first payment within a month has the same year as one on its first day") {
    const EscrowAccount account = analyse_escrow(all_bills, date("2026-07-15"), 2);
    CHECK(account.months == analyse_escrow(all_bills, july, 2).months);
}

TEST_CASE("What is no account is refused") {
    const Bills early{{MonthPart::property_tax, Money::dollars(1), date("2026-06-30")}};
    const Bills late{{MonthPart::property_tax, Money::dollars(1), date("2027-07-01")}};
    const Bills negative{{MonthPart::property_tax, Money::cents(-1), date("2026-07-01")}};
    CHECK_THROWS_AS(analyse_escrow(early, july, 2), Broken);
    CHECK_THROWS_AS(analyse_escrow(late, july, 2), Broken);
    CHECK_THROWS_AS(analyse_escrow(negative, july, 2), Broken);
    CHECK_THROWS_AS(analyse_escrow(all_bills, july, 3), Broken);
    CHECK_THROWS_AS(analyse_escrow(all_bills, july, -1), Broken);
}

TEST_CASE("Any account falls to its cushion and not under, and its lines come to its deposit") {
    Seeded seeded(17);
    for (int i = 0; i < 20'000; ++i) {
        const Bills bills = any_bills(seeded, i % 2 == 0 ? 2'000'000 : 40);
        const auto cushion_months = static_cast<int>(seeded.between(0, 2));
        const EscrowAccount account = analyse_escrow(bills, july, cushion_months);
        Money lowest = account.months[0].balance;
        Money paid;
        for (const EscrowMonth& month : account.months) {
            lowest = std::min(lowest, month.balance);
            paid += month.paid;
        }
        const bool holds = lowest == account.cushion && paid == account.yearly &&
                           account.cushion * 12 <= account.yearly * cushion_months;
        const ItemisedEscrow itemised = itemise(account, bills);
        Money lines = itemised.adjustment;
        for (const EscrowLine& line : itemised.lines) lines += line.total();
        if (!holds || lines != account.initial_deposit || itemised.adjustment > Money{}) FAIL(i);
    }
    CHECK(analyse_escrow(any_bills(seeded, 100), july, 2).months.size() == 13);
}

TEST_CASE("A year that goes as expected leaves what the next one starts with") {
    const EscrowAccount account = analyse_escrow(all_bills, july, 2);
    Bills next = all_bills;
    for (EscrowBill& bill : next) bill.due = plus_months(bill.due, Months(12));
    const EscrowYearEnd end = escrow_year_end(as_set(account), all_bills, next);
    CHECK(end.balance == Money::dollars(1040)); // Source: Appendix E, part I, step 3, last June
    CHECK(end.next.first_payment == date("2027-07-01"));
    CHECK(end.next.initial_deposit == Money::dollars(1040));
    CHECK(end.surplus == Money{});
    CHECK(end.shortage == Money{});
    CHECK(end.payment() == Money::dollars(130));
}

TEST_CASE("A surplus of $50 is refunded, a smaller one may stay") {
    // Source: 12 CFR 1024.17(f)(2)(i).
    struct Row {
        const char* school_paid;
        const char* refund;
        const char* credit;
    };
    const Row rows[] = {
        {"310.00", "50.00", "0"},
        {"310.01", "0", "4.16"}, // 49.99 / 12 = 4.1658...
        {"359.95", "0", "0"},    // five cents have no twelfth
        {"0", "360.00", "0"},
    };
    const EscrowAccount account = analyse_escrow(all_bills, july, 2);
    Bills next = all_bills;
    for (EscrowBill& bill : next) bill.due = plus_months(bill.due, Months(12));
    for (const Row& row : rows) {
        CAPTURE(row.school_paid);
        Bills paid = all_bills;
        paid[0].amount = money(row.school_paid);
        const EscrowYearEnd end = escrow_year_end(as_set(account), paid, next);
        CHECK(end.surplus == Money::dollars(360) - money(row.school_paid));
        CHECK(end.refund == money(row.refund));
        CHECK(end.credit == money(row.credit));
        CHECK(end.payment() == Money::dollars(130) - money(row.credit));
    }
    // An account that ends has no payments to credit.
    Bills paid = all_bills;
    paid[0].amount = money("1380");
    CHECK(escrow_year_end(as_set(account), paid, {}).balance == money("20"));
    CHECK(escrow_year_end(as_set(account), paid, {}).refund == money("20"));
    CHECK(escrow_year_end(as_set(account), paid, {}).payment() == Money{});
}

TEST_CASE("A shortage is spread over twelve months, a deficiency with it") {
    // Source of the method: 12 CFR 1024.17(f)(3)(ii), (4)(ii). By hand: school bills of 1,000
    // leave 1040 - 640 = 400; twelve deposits of 130 would then lack 640 to the same target.
    const EscrowAccount account = analyse_escrow(all_bills, july, 2);
    Bills next = all_bills;
    for (EscrowBill& bill : next) bill.due = plus_months(bill.due, Months(12));
    Bills paid = all_bills;
    paid[0].amount = Money::dollars(1000);
    const EscrowYearEnd end = escrow_year_end(as_set(account), paid, next);
    CHECK(end.balance == Money::dollars(400));
    CHECK(end.shortage == Money::dollars(640));
    CHECK(end.instalment == money("53.33"));
    CHECK(end.payment() == money("183.33"));
    paid[0].amount = Money::dollars(1500);
    CHECK(escrow_year_end(as_set(account), paid, next).balance == Money::dollars(-100));
    CHECK(escrow_year_end(as_set(account), paid, next).shortage == Money::dollars(1140));
}

TEST_CASE("A new home's first year: bills on the land, deposits from either") {
    // By hand. Land 600 a year in halves, October and April; settled 6,000. Insurance 1,200 in May.
    const Bills first{{MonthPart::property_tax, Money::dollars(300), date("2026-10-31")},
                      {MonthPart::property_tax, Money::dollars(300), date("2027-04-30")},
                      {MonthPart::homeowners_insurance, Money::dollars(1200), date("2027-05-15")}};
    const Bills second{{MonthPart::property_tax, Money::dollars(3000), date("2027-10-31")},
                       {MonthPart::property_tax, Money::dollars(3000), date("2028-04-30")},
                       {MonthPart::homeowners_insurance, Money::dollars(1200), date("2028-05-15")}};
    Bills estimate = second; // the settled bills, a year earlier
    for (EscrowBill& bill : estimate) bill.due = plus_months(bill.due, Months(-12));

    // 7,200 / 12 = 600. From zero: October 4 x 600 - 3000 = -600, April 10 x 600 - 6000 = 0, May
    // 11 x 600 - 7200 = -600: 600 + 1200 cushion. Of 7,200 put in, 1,800 is spent.
    const EscrowOutlook settled = escrow_outlook(estimate, {first, second}, july, 2);
    REQUIRE(settled.ends.size() == 1);
    CHECK(settled.first.deposit == Money::dollars(600));
    CHECK(settled.first.initial_deposit == Money::dollars(1800));
    CHECK(settled.ends[0].balance == Money::dollars(7200));
    CHECK(settled.ends[0].surplus == Money::dollars(5400));
    CHECK(settled.ends[0].refund == Money::dollars(5400));
    CHECK(settled.ends[0].payment() == Money::dollars(600));
    CHECK(settled.change(0) == Money{});

    // 1,800 / 12 = 150. From zero: October +300, May 11 x 150 - 1800 = -150: 150 + 300 cushion.
    // It ends at 450, and 1,800 is needed: 1,350 short, 112.50 a month on top of 600.
    const EscrowOutlook land = escrow_outlook(first, {first, second}, july, 2);
    REQUIRE(land.ends.size() == 1);
    CHECK(land.first.deposit == Money::dollars(150));
    CHECK(land.first.initial_deposit == Money::dollars(450));
    CHECK(land.ends[0].balance == Money::dollars(450));
    CHECK(land.ends[0].next.deposit == Money::dollars(600));
    CHECK(land.ends[0].next.initial_deposit == Money::dollars(1800));
    CHECK(land.ends[0].shortage == Money::dollars(1350));
    CHECK(land.ends[0].instalment == money("112.50"));
    CHECK(land.ends[0].payment() == money("712.50"));
    CHECK(land.change(0) == money("562.50"));
}

TEST_CASE("A second year on the land: what the first analysis finds is run on") {
    // By hand, with the bills above: a year of 600 + 1200, another, then 6,000 + 1,200.
    const auto year = [](const char* tax, int years) {
        const auto later = [&](const char* day) {
            return plus_months(date(day), Months(12 * years));
        };
        return Bills{{MonthPart::property_tax, money(tax), later("2026-10-31")},
                     {MonthPart::property_tax, money(tax), later("2027-04-30")},
                     {MonthPart::homeowners_insurance, money("1200"), later("2027-05-15")}};
    };
    const std::vector<Bills> years{year("300", 0), year("300", 1), year("3000", 2)};
    // From the settled tax: 1,800 and 12 x 600 less 1,800 is 7,200; the land year needs 450. 6,750
    // is paid back, and 150 a month are enough for a year: 450 again, 1,350 short of the 1,800 that
    // the settled year starts with: 600 + 112.50.
    const EscrowOutlook settled = escrow_outlook(year("3000", 0), years, july, 2);
    REQUIRE(settled.ends.size() == 2);
    CHECK(settled.ends[0].refund == money("6750"));
    CHECK(settled.ends[0].payment() == money("150"));
    CHECK(settled.change(0) == money("-450"));
    CHECK(settled.ends[0].following().start == money("450"));
    CHECK(settled.ends[1].balance == money("450"));
    CHECK(settled.ends[1].shortage == money("1350"));
    CHECK(settled.change(1) == money("562.50"));
    // From the land: nothing changes after the first year.
    const EscrowOutlook land = escrow_outlook(years[0], years, july, 2);
    CHECK(land.change(0) == Money{});
    CHECK(land.ends[0].refund == Money{});
    CHECK(land.ends[1].shortage == money("1350"));
    CHECK(land.change(1) == money("562.50"));
}
