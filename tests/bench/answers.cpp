// Whole answers on the example community; growth by options and by scenarios.
#include <benchmark/benchmark.h>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/afford.hpp>
#include <quoin/answers/credit.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/answers/shift.hpp>
#include <quoin/inquiry/asking.hpp>

#include "apps/loading.hpp"

namespace {

using namespace quoin;

const apps::Loaded& six_programs() {
    static const auto loaded =
        apps::load_inquiry(QUOIN_SOURCE_DATA "/examples/oxbarrow-meadow/buyers/six-programs.json",
                           QUOIN_SOURCE_DATA "/rates");
    return *loaded;
}

void quote_of_the_example(benchmark::State& state) {
    const Sitting sitting = six_programs().sitting();
    for (auto _ : state) benchmark::DoNotOptimize(quote(sitting));
}
BENCHMARK(quote_of_the_example);

void one_home_one_scenario(benchmark::State& state) {
    const Sitting sitting = six_programs().sitting();
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    const auto& rules = sitting.rules()[static_cast<std::size_t>(state.range(0))];
    for (auto _ : state) {
        benchmark::DoNotOptimize(loan_figures(rules, home, sitting.inquiry().facts));
    }
    state.SetLabel(rules.scenario.name);
}
BENCHMARK(one_home_one_scenario)->DenseRange(0, 5);

/// The figures and everything a person is told of them: totals, dates, the APR.
void one_whole_scenario(benchmark::State& state) {
    const Sitting sitting = six_programs().sitting();
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    const auto& rules = sitting.rules()[static_cast<std::size_t>(state.range(0))];
    for (auto _ : state) {
        const LoanFigures figures = loan_figures(rules, home, sitting.inquiry().facts);
        benchmark::DoNotOptimize(scenario_answer(sitting, rules, figures));
    }
    state.SetLabel(rules.scenario.name);
}
BENCHMARK(one_whole_scenario)->DenseRange(0, 5)->Unit(benchmark::kMicrosecond);

/// Highest price, what binds, the next one, the step and the homes of the price book within it.
void afford_one_program(benchmark::State& state) {
    const Sitting sitting = six_programs().sitting().only(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(afford(sitting, {}));
    state.SetLabel(sitting.rules().front().scenario.name);
}
BENCHMARK(afford_one_program)->DenseRange(0, 5)->Unit(benchmark::kMicrosecond);

void highest_price_one_program(benchmark::State& state) {
    const Sitting sitting = six_programs().sitting();
    const auto scenario = static_cast<std::size_t>(state.range(0));
    for (auto _ : state) benchmark::DoNotOptimize(highest_price(sitting, scenario, {}));
    state.SetLabel(sitting.rules()[scenario].scenario.name);
}
BENCHMARK(highest_price_one_program)->DenseRange(0, 5)->Unit(benchmark::kMicrosecond);

void adds_whole_example(benchmark::State& state) {
    const Sitting sitting = six_programs().sitting();
    std::size_t items = 0;
    for (auto _ : state) {
        const AddsAnswer answer = adds(sitting, {});
        items = answer.items.size();
        benchmark::DoNotOptimize(answer);
    }
    state.counters["items"] = static_cast<double>(items);
}
BENCHMARK(adds_whole_example)->Unit(benchmark::kMillisecond);

/// Every mix of a builder's money under six scenarios.
void credit_of_the_example(benchmark::State& state) {
    const Sitting sitting = six_programs().sitting();
    for (auto _ : state) {
        benchmark::DoNotOptimize(credit(sitting, {Money::dollars(state.range(0)), 7}));
    }
}
BENCHMARK(credit_of_the_example)->Arg(10'000)->Arg(25'000)->Unit(benchmark::kMillisecond);

void shift_of_the_example(benchmark::State& state) {
    const Sitting sitting = six_programs().sitting();
    for (auto _ : state) benchmark::DoNotOptimize(shift(sitting, {}));
}
BENCHMARK(shift_of_the_example)->Unit(benchmark::kMillisecond);

/// Grows with the options asked about: the offered forms, over and over.
void adds_by_options(benchmark::State& state) {
    const Sitting sitting = six_programs().sitting();
    std::vector<Pick> forms;
    for (const AddsItem& item : adds(sitting, {}).items) {
        Findings none;
        const auto pick = asked_option(sitting.book(), item.id, none);
        if (pick && item.standing == Standing::offered) forms.push_back(*pick);
    }
    std::vector<Pick> asked;
    for (std::int64_t i = 0; i < state.range(0); ++i) {
        asked.push_back(forms[static_cast<std::size_t>(i) % forms.size()]);
    }
    for (auto _ : state) benchmark::DoNotOptimize(adds(sitting, asked));
    state.SetComplexityN(state.range(0));
}
BENCHMARK(adds_by_options)
    ->RangeMultiplier(2)
    ->Range(64, 1024)
    ->Complexity(benchmark::oN)
    ->Unit(benchmark::kMillisecond);

/// Grows with the scenarios of the inquiry: the six, over and over under new names.
void adds_by_scenarios(benchmark::State& state) {
    Inquiry inquiry = six_programs().inquiry;
    const std::vector<Scenario> six = inquiry.scenarios;
    inquiry.scenarios.clear();
    for (std::int64_t i = 0; i < state.range(0); ++i) {
        inquiry.scenarios.push_back(six[static_cast<std::size_t>(i) % six.size()]);
        inquiry.scenarios.back().name += " " + std::to_string(i);
    }
    const Sitting sitting(six_programs().desk, inquiry);
    for (auto _ : state) benchmark::DoNotOptimize(adds(sitting, {}));
    state.SetComplexityN(state.range(0));
}
BENCHMARK(adds_by_scenarios)
    ->RangeMultiplier(2)
    ->Range(6, 48)
    ->Complexity(benchmark::oN)
    ->Unit(benchmark::kMillisecond);

} // namespace
