// Which of two lines of costs is the lower one, stretch by stretch.
#include <shown.hpp>

#include <quoin/answers/cost_order.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

std::vector<Money> line(std::initializer_list<int> dollars) {
    std::vector<Money> amounts;
    for (const int each : dollars) amounts.push_back(Money::dollars(each));
    return amounts;
}

} // namespace

TEST_CASE("Every stretch is told: an order that turns, turns back, and stands still") {
    using enum Cheaper;
    const auto order = cost_order(line({1, 5, 5, 7, 7, 7, 3}), line({2, 4, 4, 7, 8, 9, 4}));
    CHECK(order ==
          std::vector<CostStretch>{{first, 0, 0}, {second, 1, 2}, {neither, 3, 3}, {first, 4, {}}});
}

TEST_CASE("Lines that begin alike are told apart, lines that stay alike are the same throughout") {
    using enum Cheaper;
    CHECK(cost_order(line({5, 5, 6}), line({5, 5, 5})) ==
          std::vector<CostStretch>{{neither, 0, 1}, {second, 2, {}}});
    CHECK(cost_order(line({5, 6}), line({5, 6})) == std::vector<CostStretch>{{neither, 0, {}}});
    CHECK(cost_order(line({4}), line({5})) == std::vector<CostStretch>{{first, 0, {}}});
}

TEST_CASE(
    "A line that ends stays at its last amount, and the months before the first are left out") {
    using enum Cheaper;
    CHECK(cost_order(line({9, 6}), line({2, 4, 6, 8})) ==
          std::vector<CostStretch>{{second, 0, 1}, {neither, 2, 2}, {first, 3, {}}});
    CHECK(cost_order(line({9, 6}), line({2, 4, 6, 8}), 2) ==
          std::vector<CostStretch>{{neither, 2, 2}, {first, 3, {}}});
    CHECK(cost_order(line({9, 6}), line({2, 4}), 12) == std::vector<CostStretch>{{second, 12, {}}});
}
