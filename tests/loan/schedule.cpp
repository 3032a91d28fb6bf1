// Schedules in cents: against an obvious one in exact integers, and their promises.
#include <shown.hpp>

#include <quoin/loan/level_payment.hpp>
#include <quoin/loan/mortgage_insurance.hpp>
#include <quoin/loan/schedule.hpp>

#include "oracle.hpp"
#include "seeded.hpp"
#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// Holds every row to the slow and obvious schedule, and the whole to its promise.
void check_rows(const Schedule& schedule) {
    const auto rows = oracle::schedule(schedule.terms(), schedule.payment(), schedule.extra());
    REQUIRE(schedule.months() == static_cast<int>(rows.size()));
    Money principal;
    for (const ScheduleRow& expected : rows) {
        const ScheduleRow row = schedule.row(expected.month);
        REQUIRE(row.payment == expected.payment);
        REQUIRE(row.interest == expected.interest);
        REQUIRE(row.balance == expected.balance);
        principal += row.principal;
    }
    REQUIRE(principal == schedule.terms().loan);
    REQUIRE(schedule.total_paid() == schedule.terms().loan + schedule.total_interest());
}

} // namespace

TEST_CASE("Every row of 400 schedules is what it is defined to be") {
    Seeded seeded(20261124);
    for (int i = 0; i < 400; ++i) {
        const LoanTerms terms = seeded.terms();
        CAPTURE(terms.loan, terms.rate, terms.term.count());
        check_rows(amortize(terms));
    }
}

TEST_CASE("Schedules at the edges: no rate, 25%, one month, 480 months, a dollar, nothing") {
    for (const char* percent : {"0", "0.001", "6.375", "25", "100"}) {
        for (const int months : {1, 2, 12, 360, 480}) {
            for (const char* loan : {"0.01", "1", "250000", "1000000000"}) {
                CAPTURE(percent, months, loan);
                check_rows(amortize({money(loan), rate(percent), Months(months)}));
            }
        }
    }
    const Schedule nothing = amortize({Money{}, rate("6"), Months(360)});
    CHECK(nothing.payment() == Money{});
    CHECK(nothing.total_paid() == Money{});
}

TEST_CASE("The last payment clears the balance, whatever rounding left") {
    const Schedule schedule = amortize({Money::dollars(250'000), rate("6.5"), Months(360)});
    CHECK(schedule.payment() == money("1580.17"));
    CHECK(schedule.last_payment() == money("1580.55"));
    CHECK(schedule.total_interest() == money("318861.58"));
    // Seven payments of a thousand dollars without interest: 142.86, the last 142.84.
    const Schedule plain = amortize({Money::dollars(1'000), Rate{}, Months(7)});
    CHECK(plain.payment() == money("142.86"));
    CHECK(plain.last_payment() == money("142.84"));
}

TEST_CASE("Extra principal ends a loan sooner and saves its interest") {
    const LoanTerms terms{Money::dollars(250'000), rate("6.5"), Months(360)};
    const Schedule plain = amortize(terms);
    const Schedule extra = amortize(terms, plain.payment(), Money::dollars(200));
    check_rows(extra);
    CHECK(extra.months() < plain.months());
    CHECK(extra.total_interest() < plain.total_interest());
    // All of it at once.
    const Schedule at_once = amortize(terms, plain.payment(), Money::dollars(250'000));
    CHECK(at_once.months() == 1);
    CHECK(at_once.total_paid() == Money::dollars(250'000) + money("1354.17"));
}

TEST_CASE("A premium falls by its years and ends when it is said to") {
    const MonthlyPremium premium({money("100"), money("90"), money("80")}, 30);
    CHECK(premium.in_month(1) == money("100"));
    CHECK(premium.in_month(12) == money("100"));
    CHECK(premium.in_month(13) == money("90"));
    CHECK(premium.in_month(30) == money("80"));
    CHECK(premium.in_month(31) == Money{});
    CHECK(premium.paid_through(13) == money("1290"));
    CHECK(premium.paid_through(360) == money("2760"));
}
