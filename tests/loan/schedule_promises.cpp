// Schedules by the thousand against the slow oracle, and what happens when a promise is broken.
#include <shown.hpp>

#include <limits>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/level_payment.hpp>

#include "oracle.hpp"
#include "seeded.hpp"

namespace quoin {

/// A schedule spoilt on purpose.
struct DamagedSchedule {
    static constexpr LoanTerms terms{Money::dollars(250'000), Rate::millionths(6'500'000),
                                     Months(360)};
    Schedule schedule = amortize(terms);

    void set_balance(int month, Money balance) {
        schedule.balances_[static_cast<std::size_t>(month)] = balance;
    }
    void set_last_payment(Money payment) { schedule.last_payment_ = payment; }
    void set_payment(Money payment) { schedule.steps_[0].payment = payment; }
    void set_extra(Money extra) { schedule.extra_ = extra; }
    void set_loan(Money loan) { schedule.terms_.loan = loan; }
    void set_rate(Rate rate) { schedule.steps_[0].rate = rate; }
    void drop_last_row() { schedule.balances_.pop_back(); }
};

} // namespace quoin

using namespace quoin;

namespace {

bool same_rows(const Schedule& schedule) {
    const auto rows = oracle::schedule(schedule.terms(), schedule.payment(), schedule.extra());
    if (schedule.months() != static_cast<int>(rows.size())) return false;
    Money paid;
    Money interest;
    for (const ScheduleRow& expected : rows) {
        const ScheduleRow row = schedule.row(expected.month);
        paid += expected.payment;
        interest += expected.interest;
        if (row.payment != expected.payment || row.interest != expected.interest ||
            row.principal != expected.principal || row.balance != expected.balance ||
            schedule.balance(row.month) != expected.balance ||
            schedule.paid_through(row.month) != paid ||
            schedule.interest_through(row.month) != interest) {
            return false;
        }
    }
    return schedule.total_paid() == paid && schedule.total_interest() == interest &&
           schedule.last_payment() == rows.back().payment &&
           paid - interest == schedule.terms().loan;
}

/// Schedules under the level payment, a stranger's payment, and extra principal, in turn.
Schedule any_schedule(Seeded& seeded, int i) {
    const LoanTerms terms = seeded.terms();
    const Money level = level_payment(terms.loan, terms.rate, terms.term);
    if (i % 4 == 1) return amortize(terms, level, seeded.loan(level.count() + 1));
    if (i % 4 == 2) return amortize(terms, seeded.loan(2 * level.count() + 1));
    return amortize(terms);
}

} // namespace

TEST_CASE("Ten thousand schedules, row by row against the oracle") {
    Seeded seeded(11);
    for (int i = 0; i < 10'000; ++i) {
        const Schedule schedule = any_schedule(seeded, i);
        if (!same_rows(schedule)) {
            FAIL(schedule.terms().loan.text()
                 << " at " << schedule.terms().rate.text() << " % for "
                 << schedule.terms().term.count() << ", paying " << schedule.payment().text()
                 << " + " << schedule.extra().text());
        }
    }
    SUCCEED();
}

TEST_CASE("A payment under the interest lets the balance grow, and the last one clears it") {
    struct Row {
        std::int64_t loan, rate;
        int term;
        std::int64_t payment;
    };
    const Row rows[] = {
        {10'000'000, 12'000'000, 360, 99'999},  // a cent short of the interest
        {10'000'000, 12'000'000, 360, 100'000}, // the interest and nothing else
        {10'000'000, 12'000'000, 360, 0},
        {100, 25'000'000, 480, 2},
        {100, 25'000'000, 480, 1},
        {1, 100'000'000, 480, 0},
        {7, 100'000'000, 480, 0},
        {500'000'000'000'000, 6'000'000, 12, 1},
    };
    for (const Row& row : rows) {
        CAPTURE(row.loan, row.rate, row.payment);
        const LoanTerms terms{Money::cents(row.loan), Rate::millionths(row.rate), Months(row.term)};
        const Schedule schedule = amortize(terms, Money::cents(row.payment));
        CHECK(same_rows(schedule));
        CHECK(schedule.months() == row.term);
        CHECK(schedule.balance(row.term - 1) >= terms.loan);
        CHECK(schedule.balance(row.term).is_zero());
    }
}

TEST_CASE("Loans around and beyond what the quick way holds") {
    constexpr std::int64_t two_to_33 = std::int64_t{1} << 33; // the quick check of rows
    constexpr std::int64_t quick = 18'446'744'073'709'551'615U / 1'200'000'000 - 1; // the quick run
    for (const std::int64_t edge :
         {two_to_33, quick, std::int64_t{1} << 53, std::int64_t{1} << 58}) {
        for (const int step : {-1, 0, 1}) {
            for (const std::int64_t rate : {0, 6'125'001, 100'000'000}) {
                const LoanTerms terms{Money::cents(edge + step), Rate::millionths(rate),
                                      Months(360)};
                CAPTURE(edge, step, rate);
                CHECK(same_rows(amortize(terms)));
            }
        }
    }
}

TEST_CASE("Rounding up ends a loan early") {
    // 2.00 without interest over 360 months: 0.0055... rounds up to a cent, paid up in 200.
    const Schedule schedule = amortize({Money::dollars(2), Rate{}, Months(360)});
    CHECK(schedule.payment() == Money::cents(1));
    CHECK(schedule.months() == 200);
    CHECK(schedule.balance(200).is_zero());
    CHECK(schedule.balance(360).is_zero());
    CHECK(schedule.total_paid() == Money::dollars(2));
    CHECK(schedule.paid_through(360) == Money::dollars(2));
    CHECK(same_rows(schedule));
    // 1.00 over 480: the payment rounds to nothing, and the last one is all of it.
    const Schedule late = amortize({Money::dollars(1), Rate{}, Months(480)});
    CHECK(late.payment().is_zero());
    CHECK(late.months() == 480);
    CHECK(late.last_payment() == Money::dollars(1));
}

TEST_CASE("A loan of nothing is paid already") {
    for (const Rate rate : {Rate{}, Rate::millionths(6'500'000)}) {
        const Schedule schedule = amortize({Money{}, rate, Months(360)}, Money::dollars(10));
        CHECK(schedule.months() == 0);
        CHECK(schedule.balances().size() == 1);
        CHECK(schedule.total_paid().is_zero());
        CHECK(schedule.total_interest().is_zero());
        CHECK(schedule.last_payment().is_zero());
        CHECK(schedule.balance(12).is_zero());
        CHECK_THROWS_AS(schedule.row(1), Broken);
    }
}

TEST_CASE("Schedules refuse what is no loan") {
    const Rate rate = Rate::millionths(6'500'000);
    const Money loan = Money::dollars(250'000);
    CHECK_THROWS_AS(amortize({-loan, rate, Months(360)}), Broken);
    CHECK_THROWS_AS(amortize({loan, rate, Months(0)}), Broken);
    CHECK_THROWS_AS(amortize({loan, rate, Months(481)}), Broken);
    CHECK_THROWS_AS(amortize({loan, rate, Months(360)}, Money::cents(-1)), Broken);
    CHECK_THROWS_AS(amortize({loan, rate, Months(360)}, loan, Money::cents(-1)), Broken);
    const Schedule schedule = amortize({loan, rate, Months(360)});
    CHECK_THROWS_AS(schedule.row(0), Broken);
    CHECK_THROWS_AS(schedule.row(361), Broken);
    const Money largest = Money::cents(std::numeric_limits<std::int64_t>::max());
    CHECK_THROWS_AS(amortize({largest, rate, Months(12)}, Money{}), Overflow);
}

TEST_CASE("A schedule that breaks its promise is found out") {
    const Money cent = Money::cents(1);
    const auto broken = [](auto damage) {
        DamagedSchedule damaged;
        check(damaged.schedule); // whole before
        damage(damaged);
        CHECK_THROWS_AS(check(damaged.schedule), Broken);
    };
    for (const int month : {1, 2, 180, 358, 359}) {
        for (const Money by : {cent, -cent, Money::dollars(300'000), Money::dollars(-300'000)}) {
            CAPTURE(month, by);
            broken([&](auto& d) { d.set_balance(month, d.schedule.balance(month) + by); });
        }
    }
    broken([&](auto& d) { d.set_balance(360, cent); });
    broken([&](auto& d) { d.set_balance(0, d.schedule.balance(0) + cent); });
    broken([&](auto& d) { d.set_last_payment(d.schedule.last_payment() + cent); });
    broken([&](auto& d) { d.set_last_payment(d.schedule.last_payment() - cent); });
    broken([&](auto& d) { d.set_payment(d.schedule.payment() + cent); });
    broken([&](auto& d) { d.set_payment(d.schedule.payment() - cent); });
    broken([&](auto& d) { d.set_extra(cent); });
    broken([&](auto& d) { d.set_loan(d.schedule.terms().loan + cent); });
    broken([&](auto& d) { d.set_rate(Rate::millionths(6'500'001)); });
    broken([](auto& d) { d.drop_last_row(); });
    broken([](auto& d) {
        for (int month = 0; month <= 360; ++month) d.drop_last_row();
    });
}

TEST_CASE("A broken row is named with its loan") {
    DamagedSchedule damaged;
    damaged.set_balance(180, damaged.schedule.balance(180) + Money::cents(1));
    CHECK_THROWS_WITH(check(damaged.schedule),
                      "schedule row 180: interest is not balance x rate / 12 (loan $250000.00, "
                      "rate 6.5%, 360 months)");
    DamagedSchedule last;
    last.set_balance(360, Money::cents(1));
    CHECK_THROWS_WITH(check(last.schedule), "schedule row 360: the last balance is not zero (loan "
                                            "$250000.00, rate 6.5%, 360 months)");
}
