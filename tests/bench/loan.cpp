// Payments and schedules, against a bare integer loop and a decimal type of fifty digits.
#include <benchmark/benchmark.h>
#include <boost/multiprecision/cpp_dec_float.hpp>

#include <vector>

#include <quoin/loan/level_payment.hpp>
#include <quoin/loan/schedule.hpp>

#include "../support/premiums.hpp"

namespace {

using namespace quoin;

constexpr Months term{360};
constexpr Rate rate = Rate::millionths(6'375'000);

/// Loans a few dollars apart, so that no run repeats the last.
Money loan_number(std::int64_t i) { return Money::dollars(250'000 + i % 4096); }

void payment_fast(benchmark::State& state) {
    std::int64_t i = 0;
    for (auto _ : state) benchmark::DoNotOptimize(level_payment_fast(loan_number(++i), rate, term));
}
BENCHMARK(payment_fast);

void payment_decided(benchmark::State& state) {
    std::int64_t i = 0;
    for (auto _ : state) benchmark::DoNotOptimize(level_payment(loan_number(++i), rate, term));
}
BENCHMARK(payment_decided);

void payment_exact(benchmark::State& state) {
    std::int64_t i = 0;
    for (auto _ : state) {
        benchmark::DoNotOptimize(level_payment_exact(loan_number(++i), rate, term));
    }
}
BENCHMARK(payment_exact);

/// What a schedule is compared with: the same months in 64-bit integers, and nothing else.
void schedule_bare_loop(benchmark::State& state) {
    std::int64_t i = 0;
    for (auto _ : state) {
        const Money loan = loan_number(++i);
        const std::int64_t payment = level_payment(loan, rate, term).count();
        std::int64_t balance = loan.count();
        for (int month = 1; month < term.count(); ++month) {
            const std::int64_t interest =
                (balance * rate.millionths() + Rate::monthly_denominator / 2) /
                Rate::monthly_denominator;
            balance -= payment - interest;
        }
        benchmark::DoNotOptimize(balance);
    }
}
BENCHMARK(schedule_bare_loop);

void schedule_quoin(benchmark::State& state) {
    std::int64_t i = 0;
    for (auto _ : state) benchmark::DoNotOptimize(amortize({loan_number(++i), rate, term}));
}
BENCHMARK(schedule_quoin);

void schedule_dec_float_50(benchmark::State& state) {
    using Number = boost::multiprecision::cpp_dec_float_50;
    std::int64_t i = 0;
    for (auto _ : state) {
        const Money loan = loan_number(++i);
        const Number payment = Number(level_payment(loan, rate, term).count());
        const Number monthly = Number(rate.millionths()) / Rate::monthly_denominator;
        Number balance = loan.count();
        std::vector<Number> balances{balance};
        for (int month = 1; month < term.count(); ++month) {
            const Number interest = floor(balance * monthly + Number(0.5));
            balance -= payment - interest;
            balances.push_back(balance);
        }
        benchmark::DoNotOptimize(balances.data());
    }
}
BENCHMARK(schedule_dec_float_50);

void hud_premium(benchmark::State& state) {
    std::int64_t i = 0;
    const Percent annual(*Decimal::parse("0.55"));
    const Percent upfront(*Decimal::parse("1.75"));
    for (auto _ : state) {
        benchmark::DoNotOptimize(
            test::hud_premium({loan_number(++i), rate, term}, annual, upfront, term.count()));
    }
}
BENCHMARK(hud_premium);

} // namespace
