// What moves until the closing: no step is the quote itself, each cell comes out by another way,
// and a payment stays within the ratios up to the rate told and not a thousandth past it.
#include <shown.hpp>

#include <algorithm>

#include <quoin/answers/quote.hpp>
#include <quoin/answers/shift.hpp>
#include <quoin/render/answers.hpp>

#include "homes.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const ShiftRow& row_at(const ShiftScenario& s, int steps) {
    return *std::find_if(s.rows.begin(), s.rows.end(),
                         [&](const ShiftRow& row) { return row.steps == steps; });
}

/// The month of a scenario at a rate quoted with today's points; nothing where it is barred.
std::optional<Money> month_at(const Sitting& sitting, std::size_t index, Rate rate,
                              const PurchaseFacts& facts, Money price_change = {}) {
    PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    home.contract_price += price_change;
    const ScenarioRules& given = sitting.rules()[index];
    Scenario scenario = given.scenario;
    const LoanFigures today = loan_figures(given, home, facts);
    scenario.rate = {RateChoice::By::quoted, today.points, rate};
    const LoanFigures f = loan_figures(given.with(scenario), home, facts);
    return f.available() ? std::optional(f.monthly.total()) : std::nullopt;
}

const ShiftIncome& as_it_stands(const ShiftRatios& ratios) {
    const auto here = std::find_if(ratios.incomes.begin(), ratios.incomes.end(),
                                   [](const ShiftIncome& one) { return one.by == Percent{}; });
    REQUIRE(here != ratios.incomes.end());
    return *here;
}

} // namespace

TEST_CASE("No step of the rate is the quote") {
    Homes homes(31);
    int checked = 0;
    for (int i = 0; i < 40; ++i) {
        Inquiry inquiry = homes.next();
        for (Scenario& scenario : inquiry.scenarios) {
            if (homes.below(3) == 0) {
                scenario.down = {
                    DownPayment::By::cash, {}, Money::dollars(30'000 + homes.below(150'000))};
            }
        }
        const Sitting sitting(six_programs().desk, inquiry);
        const QuoteAnswer quoted = quote(sitting);
        const ShiftAnswer answer = shift(sitting, {1, Percent(decimal("0.125"))});
        for (std::size_t s = 0; s < answer.scenarios.size(); ++s) {
            const ShiftScenario& each = answer.scenarios[s];
            REQUIRE(each.available() == quoted.scenarios[s].available());
            if (!each.available()) continue;
            const ShiftRow& row = row_at(each, 0);
            CHECK(row.rate == quoted.scenarios[s].terms.rate);
            CHECK(row.apr == quoted.scenarios[s].terms.apr);
            CHECK(row.cells[0].monthly == quoted.scenarios[s].monthly.total());
            CHECK(row.cells[0].cash_needed == quoted.scenarios[s].cash.needed());
            CHECK(row.cells[0].loan == quoted.scenarios[s].loan);
            ++checked;
        }
    }
    CHECK(checked > 100);
}

TEST_CASE("A moved rate and price come out as a rate quoted elsewhere does") {
    const Sitting sitting = six_programs().sitting();
    const ShiftAnswer answer = shift(sitting, {4, Percent(decimal("0.125"))});
    for (std::size_t s = 0; s < answer.scenarios.size(); ++s) {
        const ShiftScenario& each = answer.scenarios[s];
        REQUIRE(each.rows.size() == 9);
        for (const ShiftRow& row : each.rows) {
            CHECK(row.rate.percent() - each.terms.rate.percent() == row.by.value());
            const PurchaseFacts& facts = sitting.inquiry().facts;
            CHECK(month_at(sitting, s, row.rate, facts) == row.cells[0].monthly);
            CHECK(month_at(sitting, s, row.rate, facts, each.cases[3].amount) ==
                  row.cells[3].monthly);
            PurchaseFacts low = facts;
            low.appraised_value = each.cases[4].amount;
            CHECK(month_at(sitting, s, row.rate, low) == row.cells[4].monthly);
        }
        CHECK(each.cases[3].amount == Money::dollars(5000));
        CHECK(each.cases[1].amount + each.cases[2].amount == Money{});
    }
}

TEST_CASE("A rate does not move to zero, nor below") {
    Inquiry inquiry = six_programs().inquiry;
    for (Scenario& scenario : inquiry.scenarios) {
        scenario.rate = {RateChoice::By::quoted, Points{}, rate("0.5")};
    }
    const ShiftAnswer answer =
        shift(Sitting(six_programs().desk, inquiry), {5, Percent(decimal("0.125"))});
    for (const ShiftScenario& each : answer.scenarios) {
        REQUIRE(each.rows.size() == 9); // three down of the five, today's, five up
        CHECK(each.rows.front().rate == rate("0.125"));
    }
}

TEST_CASE("A month rises with the rate, and a low appraisal asks for more cash") {
    const Sitting sitting = six_programs().sitting();
    for (const ShiftScenario& s : shift(sitting, {4, Percent(decimal("0.25"))}).scenarios) {
        for (std::size_t i = 1; i < s.rows.size(); ++i) {
            CHECK(s.rows[i - 1].cells[0].monthly < s.rows[i].cells[0].monthly);
        }
        const ShiftRow& now = row_at(s, 0);
        CHECK(now.cells[4].cash_needed > now.cells[0].cash_needed);
        CHECK(now.cells[5].cash_needed > now.cells[4].cash_needed);
    }
}

namespace {

/// Whether a month at a rate is within a program's ratios, reckoned here in whole percents where
/// the program does so.
bool within_ratios(const RatioLimits& limits, Percent back, Money income, Money month,
                   Money debts) {
    if (limits.whole_percents) { // 41.4% counts as 41%
        const auto whole =
            multiply_divide((month + debts).count(), 100, income.count(), Rounding::half_away);
        return Decimal::whole(whole) <= back.value();
    }
    return month + debts <= percent_of(income, back, Rounding::down) &&
           (!limits.front || month <= percent_of(income, *limits.front, Rounding::down));
}

} // namespace

TEST_CASE("The highest rate within the ratios is the last thousandth that is, at every income") {
    const Sitting sitting = six_programs().sitting();
    const Inquiry& inquiry = sitting.inquiry();
    const Money debts = inquiry.monthly_debts.value();
    const ShiftAnswer answer = shift(sitting, {});
    int found = 0;
    for (std::size_t s = 0; s < answer.scenarios.size(); ++s) {
        const ShiftScenario& each = answer.scenarios[s];
        REQUIRE(each.ratios);
        const RatioLimits& limits = each.ratios->limits;
        const auto check = [&](const ShiftRoom& room, Percent back, Money income) {
            const auto within = [&](Rate at) {
                const Money month = month_at(sitting, s, at, inquiry.facts).value();
                return within_ratios(limits, back, income, month, debts);
            };
            if (!room.to_a_thousandth) { // not even at the lowest rate there is
                CHECK_FALSE(within(rate("0.001")));
                return;
            }
            ++found;
            CHECK(within(*room.to_a_thousandth));
            const Rate past =
                Rate::percent(room.to_a_thousandth->percent() + decimal("0.001")).value();
            CHECK_FALSE(within(past));
            if (!room.in_steps) return; // the lowest step is above it
            CHECK(*room.in_steps <= *room.to_a_thousandth);
            CHECK(room.to_a_thousandth->percent() - room.in_steps->percent() < decimal("0.125"));
        };
        CHECK(each.ratios->incomes.size() == 6);
        for (const ShiftIncome& one : each.ratios->incomes) {
            check(one.room, limits.back, one.income);
            CHECK(one.within ==
                  within_ratios(limits, limits.back, one.income, each.monthly, debts));
            CHECK(one.within == (one.room.to_a_thousandth >= each.terms.rate));
        }
        CHECK(limits.back_automated.has_value() == each.ratios->room_automated.has_value());
        if (each.ratios->room_automated) {
            check(*each.ratios->room_automated, *limits.back_automated,
                  inquiry.monthly_income.value());
        }
    }
    CHECK(found > 20);
}

TEST_CASE("The least income is the least: with a cent less the limits are over at today's rate") {
    // Of few debts the housing ratio decides, of many the ratio of all debts.
    const Money debts = GENERATE(Money{}, Money::dollars(450), Money::dollars(3'000));
    CAPTURE(debts.count());
    Inquiry inquiry = six_programs().inquiry;
    inquiry.monthly_debts = debts;
    const ShiftAnswer answer = shift(Sitting(six_programs().desk, inquiry), {});
    for (std::size_t s = 0; s < answer.scenarios.size(); ++s) {
        const ShiftScenario& each = answer.scenarios[s];
        const RatioLimits& limits = each.ratios->limits;
        const Money least = each.ratios->least_income;
        const Money less = least - Money::cents(1);
        CHECK(within_ratios(limits, limits.back, least, each.monthly, debts));
        CHECK_FALSE(within_ratios(limits, limits.back, less, each.monthly, debts));
        Inquiry other = inquiry;
        other.monthly_income = least;
        const ShiftAnswer then = shift(Sitting(six_programs().desk, other), {});
        CHECK(then.scenarios[s].ratios->least_income == least);
        CHECK(as_it_stands(*then.scenarios[s].ratios).within);
        other.monthly_income = less;
        const ShiftAnswer under = shift(Sitting(six_programs().desk, other), {});
        CHECK_FALSE(as_it_stands(*under.scenarios[s].ratios).within);
    }
}

TEST_CASE("Without an income nothing is said of ratios, and with too little no rate is found") {
    Inquiry inquiry = six_programs().inquiry;
    inquiry.monthly_income.reset();
    const Sitting without(six_programs().desk, inquiry);
    const ShiftAnswer silent = shift(without, {});
    for (const ShiftScenario& s : silent.scenarios) CHECK_FALSE(s.ratios);
    CHECK(text_of(silent).find("income") == std::string::npos);
    inquiry.monthly_income = Money::dollars(1000);
    const Sitting poor(six_programs().desk, inquiry);
    for (const ShiftScenario& s : shift(poor, {}).scenarios) {
        REQUIRE(s.ratios);
        CHECK_FALSE(as_it_stands(*s.ratios).room.to_a_thousandth);
    }
}

TEST_CASE("A longer lock at today's rate costs what its ladder says") {
    const Sitting sitting = six_programs().sitting();
    for (const ShiftScenario& s : shift(sitting, {}).scenarios) {
        REQUIRE_FALSE(s.locks.empty());
        int chosen = 0;
        for (std::size_t i = 0; i < s.locks.size(); ++i) {
            const ShiftLock& lock = s.locks[i];
            if (i > 0) CHECK(s.locks[i - 1].days < lock.days);
            CHECK(lock.covers_closing == (lock.ends >= sitting.inquiry().closing));
            if (!lock.is_chosen) continue;
            ++chosen;
            CHECK(lock.points == s.terms.points);
            CHECK(lock.extra_cash == Money{});
        }
        CHECK(chosen == 1);
    }
}
