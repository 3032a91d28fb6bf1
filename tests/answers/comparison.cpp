// Loans side by side: when points pay back, and from which month one costs less than another.
#include <shown.hpp>

#include <quoin/answers/compare.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// The example's first scenario twice: with no points, and at a lower rung that takes some.
Inquiry with_and_without_points() {
    Inquiry inquiry = six_programs().inquiry;
    Scenario plain = inquiry.scenarios.front();
    plain.name = "plain";
    Scenario bought = plain;
    bought.name = "bought";
    bought.rate.points = Points(decimal("1"));
    inquiry.scenarios = {plain, bought};
    return inquiry;
}

} // namespace

TEST_CASE("Points pay back in the month from which on they have cost no more than none") {
    const Inquiry inquiry = with_and_without_points();
    const Sitting sitting(six_programs().desk, inquiry);
    const CompareAnswer answer = compare(sitting);
    REQUIRE(answer.points.size() == 1);
    const PointsPayback& payback = answer.points.front();
    CHECK(payback.scenario == 1);
    CHECK(payback.rate < payback.rate_without);
    CHECK(payback.extra_cash > Money{});
    CHECK(payback.saved_monthly > Money{});
    REQUIRE(payback.break_even.has_value());
    const auto figures = sitting.figures(price_home(sitting.book(), inquiry.selection));
    const int month = *payback.break_even;
    CHECK(figures[1].spent_and_owed(month) <= figures[0].spent_and_owed(month));
    CHECK(figures[1].spent_and_owed(month - 1) > figures[0].spent_and_owed(month - 1));
    // The same function says it of two loans: the other one first.
    REQUIRE(answer.orders.size() == 1);
    const std::vector<CostStretch>& order = answer.orders.front().stretches;
    REQUIRE(order.size() == payback.order.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        CHECK(order[i].from == payback.order[i].from);
        CHECK(order[i].to == payback.order[i].to);
        CHECK((order[i].cheaper == Cheaper::first) ==
              (payback.order[i].cheaper == Cheaper::second));
    }
}

namespace {

/// Month by month, what an order says is so; and where it says that it changes, it does.
int check_orders(const apps::Loaded& loaded, const Inquiry& inquiry) {
    const Sitting sitting(loaded.desk, inquiry);
    const CompareAnswer answer = compare(sitting);
    const auto figures = sitting.figures(price_home(sitting.book(), inquiry.selection));
    CHECK(answer.orders.size() == figures.size() * (figures.size() - 1) / 2);
    int turning_back = 0;
    for (const LoanOrder& order : answer.orders) {
        CAPTURE(order.first, order.second);
        REQUIRE(order.first < order.second);
        int month = 0;
        int changes = 0;
        for (const CostStretch& stretch : order.stretches) {
            REQUIRE(stretch.from == month);
            changes += stretch.cheaper != Cheaper::neither;
            for (const int end = stretch.to.value_or(400); month <= end; ++month) {
                const Money a = figures[order.first].spent_and_owed(month);
                const Money b = figures[order.second].spent_and_owed(month);
                const Cheaper cheaper = a == b  ? Cheaper::neither
                                        : a < b ? Cheaper::first
                                                : Cheaper::second;
                REQUIRE(stretch.cheaper == cheaper);
            }
        }
        CHECK_FALSE(order.stretches.back().to.has_value());
        turning_back += changes > 2;
    }
    return turning_back;
}

} // namespace

TEST_CASE("Of every two loans it is said which has cost less from which payment to which") {
    const auto moves_again =
        apps::load_inquiry(QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/moves-again.json",
                           QUOIN_SOURCE_DIR "/rates");
    // Orders that turn back are told to the end.
    CHECK(check_orders(*moves_again, moves_again->inquiry) >= 2);
    CHECK(check_orders(six_programs(), six_programs().inquiry) == 2);
}

TEST_CASE("Loans that cost the same at the closing are compared as well") {
    Inquiry inquiry = six_programs().inquiry;
    Scenario plain = inquiry.scenarios.front();
    Scenario ahead = plain;
    ahead.name = "ahead";
    ahead.extra_principal = money("100");
    Scenario twin = plain;
    twin.name = "twin";
    inquiry.scenarios = {plain, ahead, twin};
    const auto orders = compare(Sitting(six_programs().desk, inquiry)).orders;
    REQUIRE(orders.size() == 3);
    using enum Cheaper;
    // The first payment's interest is the same; extra principal saves from the second on.
    CHECK(orders[0].stretches == std::vector<CostStretch>{{neither, 0, 1}, {second, 2, {}}});
    CHECK(orders[1].stretches == std::vector<CostStretch>{{neither, 0, {}}});
    CHECK(check_orders(six_programs(), inquiry) == 0);
}

TEST_CASE("A curve begins with the cash and the loan, and ends with the loan paid") {
    const CompareAnswer answer = compare(six_programs().sitting());
    for (std::size_t i = 0; i < answer.scenarios.size(); ++i) {
        const auto& curve = answer.curves[i];
        CHECK(curve.front().balance == answer.scenarios[i].loan);
        CHECK(curve.front().spent_and_owed ==
              answer.scenarios[i].cash.needed() + answer.scenarios[i].loan);
        CHECK(curve.back().balance == Money{});
        CHECK(curve.back().paid == answer.scenarios[i].paid_over_loan);
        CHECK(curve.size() == static_cast<std::size_t>(answer.scenarios[i].payments / 12 + 1));
    }
}

TEST_CASE("Over the years each loan is held against any one of them, through the longest") {
    const Sitting& sitting = six_programs().sitting();
    const auto figures = sitting.figures(price_home(sitting.book(), sitting.inquiry().selection));
    for (std::size_t against = 0; against < figures.size(); ++against) {
        const CompareAnswer answer = compare(sitting, against);
        for (std::size_t i = 0; i < figures.size(); ++i) {
            CAPTURE(against, i);
            const auto& apart = answer.apart[i];
            REQUIRE(apart.size() == 31); // the longest are of 30 years
            for (const YearPoint& one : apart) {
                const int month = 12 * one.year;
                CHECK(one.balance == figures[i].paid_schedule().balance(month) -
                                         figures[against].paid_schedule().balance(month));
                CHECK(one.spent_and_owed ==
                      figures[i].spent_and_owed(month) - figures[against].spent_and_owed(month));
                // Nothing is owed in the end; taxes and insurance go on under every loan alike.
                if (one.year == 30) CHECK(one.paid == one.spent_and_owed);
            }
            CHECK(apart.front().paid == figures[i].cash.needed() - figures[against].cash.needed());
            CHECK(compare(sitting, i).apart[against].back().paid == -apart.back().paid);
        }
    }
}

TEST_CASE("Each way to pay is held against the one that is shown, to the cent") {
    const Sitting& sitting = six_programs().sitting();
    for (std::size_t shown = 0; shown < sitting.inquiry().scenarios.size(); ++shown) {
        CAPTURE(shown);
        const CompareAnswer answer = compare(sitting, shown);
        const ScenarioAnswer& base = answer.scenarios[shown];
        REQUIRE(answer.against_shown.size() == answer.scenarios.size());
        CHECK(answer.against_shown[shown].per_month.is_zero());
        for (std::size_t i = 0; i < answer.scenarios.size(); ++i) {
            const ScenarioAnswer& each = answer.scenarios[i];
            const Added& against = answer.against_shown[i];
            REQUIRE(against.available() == (base.available() && each.available()));
            if (!against.available()) continue;
            CHECK(against.per_month == each.monthly.total() - base.monthly.total());
            CHECK(against.cash == each.cash.needed() - base.cash.needed());
            CHECK(against.to_close == each.cash.to_close() - base.cash.to_close());
        }
    }
}

TEST_CASE("Each way to pay is held against the first, to the cent") {
    const Sitting& sitting = six_programs().sitting();
    const CompareAnswer answer = compare(sitting);
    REQUIRE(answer.against_first.size() == answer.scenarios.size());
    CHECK(answer.against_first.front().per_month.is_zero());
    CHECK(answer.against_first.front().cash.is_zero());
    const ScenarioAnswer& first = answer.scenarios.front();
    for (std::size_t i = 1; i < answer.scenarios.size(); ++i) {
        const ScenarioAnswer& each = answer.scenarios[i];
        const Added& against = answer.against_first[i];
        REQUIRE(against.available() == (first.available() && each.available()));
        if (!against.available()) continue;
        CHECK(against.per_month == each.monthly.total() - first.monthly.total());
        CHECK(against.cash == each.cash.needed() - first.cash.needed());
        CHECK(against.to_close == each.cash.to_close() - first.cash.to_close());
        CHECK(against.jumps.empty());
    }
}
