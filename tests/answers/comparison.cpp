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

TEST_CASE("Points pay back in the first month in which they have cost no more than none") {
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
    REQUIRE(answer.overtakes.size() == 1);
    CHECK(answer.overtakes.front().month == month);
    CHECK(answer.overtakes.front().cheaper_later == 1);
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
