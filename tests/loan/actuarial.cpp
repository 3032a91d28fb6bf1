// Appendix J's equation for any flows: roots counted, each printed digit certain.
#include <shown.hpp>

#include <quoin/loan/actuarial.hpp>

#include "oracle.hpp"
#include "seeded.hpp"
#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;
using oracle::Fraction;

namespace {

Flow flow(const char* amount, int periods, Ratio fraction = {}, int count = 1) {
    return {money(amount), periods, fraction, count};
}

Fraction worth(const std::vector<Flow>& flows, const Fraction& i) {
    Fraction sum = 0;
    for (const Flow& each : flows) {
        Fraction grown = 1 + i * Fraction(each.fraction.top, each.fraction.bottom);
        for (int period = 0; period < each.periods; ++period) grown *= 1 + i;
        for (int k = 0; k < each.count; ++k) {
            sum += each.amount.count() / grown;
            grown *= 1 + i;
        }
    }
    return sum;
}

/// Advances less payments at an APR in percent, exactly.
Fraction lead(const ActuarialProblem& problem, Decimal apr) {
    const Fraction i = Fraction(apr.billionths(), 100 * Decimal::one) *
                       Fraction(problem.periods_per_year.bottom, problem.periods_per_year.top);
    return worth(problem.advances, i) - worth(problem.payments, i);
}

/// The lead changes sign between the APR and the next hundred-millionth of a percent.
void check_enclosed(const ActuarialProblem& problem) {
    const ActuarialSolution solution = solve(problem);
    REQUIRE(solution.trouble == ActuarialTrouble::none);
    CAPTURE(solution.apr);
    const Fraction at = lead(problem, solution.apr);
    const Fraction next = lead(problem, solution.apr + Decimal::billionths(10));
    CHECK((at == 0 || (at < 0) != (next < 0)));
}

ActuarialTrouble trouble(const ActuarialProblem& problem) { return solve(problem).trouble; }

} // namespace

TEST_CASE("The rate of drawn flows is enclosed between neighbours, by exact fractions") {
    Seeded seeded(1'026);
    for (int i = 0; i < 60; ++i) {
        ActuarialProblem problem{{seeded.between(1, 52), seeded.between(1, 2)}, {}, {}};
        problem.advances = {{Money::cents(seeded.between(500'000, 800'000)), 0, {}, 1}};
        for (int entry = 0; entry < 4; ++entry) {
            problem.payments.push_back({Money::cents(seeded.between(30'000, 90'000)),
                                        static_cast<int>(seeded.between(0, 9)),
                                        {seeded.between(0, 29), 30},
                                        static_cast<int>(seeded.between(8, 12))});
        }
        check_enclosed(problem);
    }
}

TEST_CASE("Several advances with payments between them: several changes of sign, one rate") {
    // Twelve draws of a construction loan, interest on what was drawn, then 360 payments.
    ActuarialProblem problem{{12, 1}, {}, {flow("1650", 13, {}, 360)}};
    for (int month = 0; month < 12; ++month) {
        problem.advances.push_back(flow("20000", month));
        problem.payments.push_back({Money::dollars(100 * (month + 1)), month, {15, 30}, 1});
    }
    check_enclosed(problem);
    CHECK(solve(problem).apr == decimal("7.25928306"));
}

TEST_CASE("A rate that is a decimal itself is found to its last digit") {
    // 10% a year: 1,000 paid back by 1,210 after two years; 12% a year by months, interest only.
    CHECK(solve({{1, 1}, {flow("1000", 0)}, {flow("1210", 2)}}).apr == decimal("10"));
    CHECK(solve({{12, 1}, {flow("1000", 0)}, {flow("10", 1, {}, 900), flow("1000", 900)}}).apr ==
          decimal("12"));
    CHECK(solve({{1, 1}, {flow("1000", 0)}, {flow("1050", 0, {1, 2})}}).apr == decimal("10"));
    CHECK(solve({{12, 1}, {flow("1000", 0)}, {flow("1000", 7)}}).apr == decimal("0"));
    CHECK(solve({{1, 1}, {flow("1", 0)}, {flow("101", 1)}}).apr == decimal("10000"));
    CHECK(trouble({{1, 1}, {flow("1", 0)}, {flow("101.01", 1)}}) == ActuarialTrouble::no_rate);
}

TEST_CASE("A single payment after days: the unit-period is the term, w = 365 / days") {
    // Appendix J(b)(5)(ii): a term of 255 days, 1,080 for 1,000: 8% x 365 / 255.
    const ActuarialSolution solution = solve({{365, 255}, {flow("1000", 0)}, {flow("1080", 1)}});
    CHECK(solution.apr == decimal("11.45098039"));
}

TEST_CASE("Roots are counted however close they lie") {
    // Flows made from their roots: with x = 1 + i, (x - 1.1)(x - 1.2) is 100, -230, 132.
    const auto of = [](std::vector<Flow> advances, std::vector<Flow> payments) {
        return trouble({{1, 1}, std::move(advances), std::move(payments)});
    };
    CHECK(of({flow("100", 0), flow("132", 2)}, {flow("230", 1)}) ==
          ActuarialTrouble::several_rates);
    // 10, 10.1 and 10.2%.
    CHECK(of({flow("100000", 0), flow("363660.20", 2)},
             {flow("330300", 1), flow("133463.22", 3)}) == ActuarialTrouble::several_rates);
    // 10 and 700%.
    CHECK(of({flow("100", 0), flow("880", 2)}, {flow("910", 1)}) ==
          ActuarialTrouble::several_rates);
    // The sides touch at 10% and part again; then they do not touch.
    CHECK(of({flow("100", 0), flow("121", 2)}, {flow("220", 1)}) ==
          ActuarialTrouble::several_rates);
    CHECK(of({flow("100", 0), flow("121.01", 2)}, {flow("220", 1)}) == ActuarialTrouble::no_rate);
    // 10 and -10%: two changes of sign, one rate.
    CHECK(solve({{1, 1}, {flow("100", 0), flow("99", 2)}, {flow("200", 1)}}).apr == decimal("10"));
    // A sixfold root at 10%.
    CHECK(of({flow("10000", 0), flow("181500", 2), flow("219615", 4), flow("17715.61", 6)},
             {flow("66000", 1), flow("266200", 3), flow("96630.60", 5)}) ==
          ActuarialTrouble::several_rates);
}

TEST_CASE("No rate where less is paid than advanced, or nothing is owed") {
    CHECK(trouble({{12, 1}, {flow("1000", 0)}, {flow("900", 1)}}) == ActuarialTrouble::no_rate);
    CHECK(trouble({{12, 1}, {flow("1000", 0)}, {flow("1000", 0)}}) == ActuarialTrouble::no_rate);
    CHECK(trouble({{12, 1}, {flow("1000", 0)}, {flow("1100", 0)}}) == ActuarialTrouble::no_rate);
}

TEST_CASE("One moment written in two ways is one moment") {
    const Money half = Money::dollars(600);
    const ActuarialProblem apart{
        {12, 1}, {flow("1000", 0)}, {{half, 1, {15, 30}, 1}, {half, 1, {1, 2}, 1}}};
    CHECK(solve(apart).apr == solve({{12, 1}, {flow("1000", 0)}, {flow("1200", 1, {1, 2})}}).apr);
}
