// The APR of a monthly loan and of any flows: how long a solution takes.
#include <benchmark/benchmark.h>

#include <vector>

#include <quoin/loan/actuarial.hpp>
#include <quoin/loan/annual_percentage_rate.hpp>

#include "../support/premiums.hpp"

namespace {

using namespace quoin;

constexpr Rate rate = Rate::millionths(6'375'000);
const Money loan = Money::dollars(250'000);

/// 360 payments with a premium that falls each year, as HUD's does.
std::vector<Money> falling_payments() {
    const Schedule schedule = amortize({loan, rate, Months(360)});
    const MonthlyPremium premium =
        test::hud_premium({loan, rate, Months(360)}, Percent(*Decimal::parse("0.55")),
                          Percent(*Decimal::parse("1.75")), 360);
    std::vector<Money> payments;
    for (int month = 1; month <= schedule.months(); ++month) {
        payments.push_back(schedule.row(month).payment + premium.in_month(month));
    }
    return payments;
}

/// Amounts financed a few dollars apart, so that no run repeats the last.
Money financed_number(std::int64_t i) { return Money::dollars(244'000 + i % 4096); }

void apr_monthly(benchmark::State& state) {
    const std::vector<Money> payments = falling_payments();
    std::int64_t i = 0;
    for (auto _ : state) {
        benchmark::DoNotOptimize(annual_percentage_rate(financed_number(++i), payments, {1, 18}));
    }
}
BENCHMARK(apr_monthly)->Unit(benchmark::kMicrosecond);

void apr_any_flows(benchmark::State& state) {
    ActuarialProblem problem;
    int month = 0;
    for (const Money payment : falling_payments()) {
        problem.payments.push_back({payment, ++month, {18, 30}, 1});
    }
    std::int64_t i = 0;
    for (auto _ : state) {
        problem.advances = {{financed_number(++i), 0, {}, 1}};
        benchmark::DoNotOptimize(solve(problem));
    }
}
BENCHMARK(apr_any_flows)->Unit(benchmark::kMicrosecond);

void apr_construction_draws(benchmark::State& state) {
    // Twelve draws with interest between them, then the loan is paid: several changes of sign.
    ActuarialProblem problem;
    problem.payments.push_back({Money::dollars(1'650), 13, {}, 360});
    for (int month = 0; month < 12; ++month) {
        problem.advances.push_back({Money::dollars(20'000), month, {}, 1});
        problem.payments.push_back({Money::dollars(100 * (month + 1)), month, {15, 30}, 1});
    }
    for (auto _ : state) benchmark::DoNotOptimize(solve(problem));
}
BENCHMARK(apr_construction_draws)->Unit(benchmark::kMicrosecond);

} // namespace
