// Premiums of each program against their own steps in exact fractions, and the dates that end them.
#include <shown.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/level_payment.hpp>
#include <quoin/loan/mortgage_insurance.hpp>

#include "oracle.hpp"
#include "seeded.hpp"
#include "support/premiums.hpp"

using namespace quoin;
using namespace quoin::test;
using oracle::Fraction;
using oracle::Whole;

namespace {

Percent percent(const char* text) { return Percent(Decimal::parse(text).value()); }

Fraction share(Percent of) { return Fraction(of.value().billionths(), 100'000'000'000); }

/// Averages of `balances`, year by year.
std::vector<Fraction> averages(const std::vector<Whole>& balances) {
    std::vector<Fraction> years;
    for (std::size_t first = 0; first < balances.size(); first += 12) {
        const std::size_t end = std::min(first + 12, balances.size());
        Whole sum = 0;
        for (std::size_t month = first; month < end; ++month) sum += balances[month];
        years.emplace_back(sum, end - first);
    }
    return years;
}

/// HUD's balances at the start of each month, both of its roundings done one after the other.
std::vector<Whole> hud_balances(const LoanTerms& terms) {
    const Whole payment = level_payment(terms.loan, terms.rate, terms.term).count();
    std::vector<Whole> balances;
    Whole balance = terms.loan.count();
    for (int month = 0; month < terms.term.count() && balance > 0; ++month) {
        balances.push_back(balance);
        const Whole yearly =
            oracle::nearest(Fraction(balance * terms.rate.millionths(), 1'000'000));
        balance += oracle::nearest(Fraction(yearly, 1200)) - payment;
    }
    return balances;
}

/// HUD's steps: average x annual, / (1 + upfront), / 12, each to the cent.
void check_hud(const LoanTerms& terms, Percent annual, Percent upfront, Months duration) {
    const std::vector<Whole> balances = hud_balances(terms);
    const MonthlyPremium premium = hud_premium(terms, annual, upfront, duration.count());
    REQUIRE(premium.months() == std::min(duration.count(), static_cast<int>(balances.size())));
    const std::vector<Fraction> years = averages(balances);
    Money paid;
    for (int month = 1; month <= premium.months(); ++month) {
        const Fraction& average = years[static_cast<std::size_t>((month - 1) / 12)];
        const Whole whole = oracle::nearest(average * share(annual));
        const Whole base = oracle::nearest(whole / (1 + share(upfront)));
        REQUIRE(premium.in_month(month) == oracle::to_money(oracle::nearest(Fraction(base, 12))));
        paid += premium.in_month(month);
        REQUIRE(premium.paid_through(month) == paid);
    }
}

} // namespace

TEST_CASE("HUD's premium, step by step on five hundred loans") {
    Seeded seeded(12);
    for (int i = 0; i < 500; ++i) {
        const LoanTerms terms = seeded.terms();
        const Percent annual(Decimal::billionths(seeded.between(0, 200) * 5'000'000)); // to 1%
        const Percent upfront = i % 3 == 0 ? Percent{} : percent("1.75");
        const Months duration = i % 2 == 0 ? terms.term : Months(132);
        CAPTURE(terms.loan, terms.rate, terms.term.count());
        check_hud(terms, annual, upfront, duration);
    }
}

TEST_CASE("HUD's premium at the edges") {
    struct Row {
        std::int64_t loan, rate;
        int term, duration;
    };
    const Row rows[] = {
        {0, 6'500'000, 360, 360},
        {1, 6'500'000, 360, 360},
        {10'000'000, 0, 360, 360},
        {200, 0, 360, 360}, // paid up in 200 months
        {10'000'000, 6'500'000, 1, 1},
        {10'000'000, 6'500'000, 355, 360},
        {10'000'000, 6'500'000, 360, 7},
        {10'000'000, 6'500'000, 360, 0},
        {10'000'000, 25'000'000, 480, 480},
        {15'372'286'727, 6'500'000, 360, 360}, // the largest of the quick way, and beyond it
        {15'372'286'728, 6'500'000, 360, 360},
        {900'000'000'000'000, 6'500'000, 360, 132},
        {50, 12'000'000, 480, 480}, // HUD's interest is a cent over the payment
    };
    for (const Row& row : rows) {
        CAPTURE(row.loan, row.rate, row.term, row.duration);
        check_hud({Money::cents(row.loan), Rate::millionths(row.rate), Months(row.term)},
                  percent("0.55"), percent("1.75"), Months(row.duration));
    }
}

TEST_CASE("USDA's fee on the average balance of each year") {
    Seeded seeded(13);
    for (int i = 0; i < 300; ++i) {
        const LoanTerms terms = seeded.terms();
        CAPTURE(terms.loan, terms.rate, terms.term.count());
        const Schedule schedule = amortize(terms);
        std::vector<Whole> balances;
        for (int month = 0; month < schedule.months(); ++month) {
            balances.emplace_back(schedule.balance(month).count());
        }
        const std::vector<Fraction> years = averages(balances);
        const MonthlyPremium fee = usda_fee(schedule, percent("0.35"), terms.term.count());
        REQUIRE(fee.months() == schedule.months());
        for (int month = 1; month <= fee.months(); ++month) {
            const Fraction& average = years[static_cast<std::size_t>((month - 1) / 12)];
            const Whole yearly = oracle::nearest(average * share(percent("0.35")));
            REQUIRE(fee.in_month(month) == oracle::to_money(oracle::nearest(Fraction(yearly, 12))));
        }
    }
    const Schedule schedule = amortize({Money::dollars(150'000), Rate{}, Months(360)});
    CHECK(usda_fee(schedule, percent("0.35"), 12).months() == 12);
}

TEST_CASE("A level premium is the same in each of its months") {
    const MonthlyPremium premium = level_premium(Money::dollars(162'000), percent("0.61"), 80);
    CHECK(premium.in_month(1) == Money::cents(8'235));
    CHECK(premium.in_month(80) == Money::cents(8'235));
    CHECK(premium.in_month(0).is_zero());
    CHECK(premium.in_month(81).is_zero());
    CHECK(premium.paid_through(60) == Money::cents(494'100));
    CHECK(premium.paid_through(480) == Money::cents(658'800));
    CHECK(premium.paid_through(0).is_zero());
    // 100,001 x 0.5% / 12 = 41.66708...; 1,234.56 x 0.875% / 12 = 0.9002
    CHECK(level_premium(Money::dollars(100'001), percent("0.5"), 1).in_month(1).count() == 4'167);
    CHECK(level_premium(Money::cents(123'456), percent("0.875"), 1).in_month(1).count() == 90);
    // 12.00 x 0.5% / 12 is half a cent
    CHECK(level_premium(Money::dollars(12), percent("0.5"), 1).in_month(1) == Money::cents(1));
    CHECK(level_premium(Money::dollars(162'000), percent("0.61"), 0).paid_through(360).is_zero());
}

TEST_CASE("A premium needs an amount to be paid") {
    CHECK_THROWS_AS(MonthlyPremium({}, 1), Broken);
    CHECK_THROWS_AS(MonthlyPremium({Money::cents(1)}, -1), Broken);
    CHECK(MonthlyPremium({}, 0).paid_through(360).is_zero());
    CHECK(MonthlyPremium().months() == 0);
}

TEST_CASE("Insurance ends with the payment that reaches the balance") {
    // 120,000 without interest over 120 months: a thousand a month, so every balance is plain.
    const Schedule schedule = amortize({Money::dollars(120'000), Rate{}, Months(120)});
    struct Row {
        std::int64_t value; ///< in cents
        int on_request, automatic, last_automatic;
    };
    const Row rows[] = {
        {12'500'000, 20, 23, 23}, // 100,000 and 97,500: the 23rd leaves 97,000
        {12'499'999, 21, 23, 23}, // a cent under: 99,999.99 needs one payment more
        {15'000'000, 0, 3, 3},    // starts at 80% exactly
        {14'999'999, 1, 4, 4},    {15'384'616, 0, 0, 0},   // starts under 78%: 120,000.0048
        {15'384'615, 0, 1, 1},                             // 119,999.997
        {12'000'000, 24, 27, 27}, {7'000'000, 64, 66, 60}, // the midpoint comes first
    };
    for (const Row& row : rows) {
        CAPTURE(row.value);
        const InsuranceEnd end = insurance_end(schedule, Money::cents(row.value));
        CHECK(end.on_request == row.on_request);
        CHECK(end.last_on_request() == std::min(row.on_request, end.midpoint));
        CHECK(end.automatic == row.automatic);
        CHECK(end.midpoint == 60);
        CHECK(end.last_automatic() == row.last_automatic);
    }
    CHECK(insurance_end(amortize({Money::dollars(1), Rate{}, Months(181)}), Money::dollars(1))
              .midpoint == 91);
    CHECK(insurance_end(schedule, Money{}).automatic == 120); // nothing but a balance of zero
}
