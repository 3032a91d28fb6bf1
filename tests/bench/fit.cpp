// Choosing wishes: the example with 25 of them, and generated price books of 200 options.
#include <ctime>

#include <benchmark/benchmark.h>

#include <quoin/answers/fit.hpp>

#include "answers/fit_cases.hpp"

namespace {

using namespace quoin;
using namespace quoin::test;

/// The example's home without selections, and a wish for each of its first 25 options that cost.
FitCase example_with_wishes(std::size_t scenario) {
    FitCase one;
    Inquiry& inquiry = one.inquiry;
    inquiry.selection.picks.clear();
    inquiry.wishes.clear();
    for (std::size_t i = 0; i < one.desk.book.options.size() && inquiry.wishes.size() < 25; ++i) {
        const Option& option = one.desk.book.options[i];
        if (option.kind == OptionKind::choice || option.kind == OptionKind::allowance) continue;
        Wish& wish = one.wish(static_cast<int>(i));
        if (option.kind == OptionKind::levels) {
            wish.pick.level = Index<Level>(option.levels.size() - 1);
        }
    }
    one.question.scenario = scenario;
    return one;
}

/// Limits that a home with this total of options just meets. False where its loan cannot be had.
bool limit_to(FitCase& one, Money options) {
    const Sitting sitting(one.desk, one.inquiry);
    const LoanFigures figures =
        loan_figures(sitting.rules()[*one.question.scenario],
                     home_at(one.desk.book, one.inquiry.selection, options), one.inquiry.facts);
    if (!figures.available()) return false;
    one.question.limits = {figures.monthly.total(), figures.cash.needed()};
    // A down payment of all the cash leaves cents over, other ones for every price.
    const DownPayment& down = sitting.rules()[*one.question.scenario].scenario.down;
    if (down.by == DownPayment::By::cash) one.question.limits.cash = down.amount;
    return true;
}

void report(benchmark::State& state, const FitHome& home) {
    state.counters["nodes"] = static_cast<double>(home.nodes);
    state.counters["proven"] = home.proven;
    state.counters["worth_billionths"] = static_cast<double>(home.worth.billionths());
    state.counters["gap_percent"] =
        100.0 * static_cast<double>((home.most - home.worth).billionths()) /
        static_cast<double>(std::max<std::int64_t>(home.most.billionths(), 1));
}

void fit_example(benchmark::State& state) {
    FitCase one = example_with_wishes(static_cast<std::size_t>(state.range(0)));
    limit_to(one, Money::dollars(42'000));
    FitHome home;
    for (auto _ : state) home = one.answer();
    report(state, home);
}
BENCHMARK(fit_example)->DenseRange(0, 5)->Unit(benchmark::kMillisecond);

/// A generated book of 200 options with so many wishes, and limits that just hold options of this
/// total: the first one drawn from the seed whose loan can be had there.
FitCase generated_with_wishes(std::uint64_t seed, int wishes, Money options) {
    FitCases cases(seed);
    for (;;) {
        FitCase one = cases.next(wishes, 200);
        one.inquiry.wishes[0].must = false;
        if (limit_to(one, options)) return one;
    }
}

void fit_generated(benchmark::State& state) {
    FitCase one = generated_with_wishes(static_cast<std::uint64_t>(state.range(0)), 60,
                                        Money::dollars(state.range(1)));
    one.question.nodes = 30'000;
    FitHome home;
    for (auto _ : state) home = one.answer();
    report(state, home);
}
BENCHMARK(fit_generated)
    ->ArgsProduct({{1, 2, 3, 4, 5, 6, 7, 8}, {40'000, 120'000, 200'000}})
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond);

/// Wishes each worth exactly what they cost: no order among them, so that a proof is out of reach,
/// and what counts is how near to the proven most a few seconds come. Of a book of 200 options.
void fit_worth_its_price(benchmark::State& state) {
    const int wishes = static_cast<int>(state.range(1));
    FitCase one = generated_with_wishes(static_cast<std::uint64_t>(state.range(0)), wishes,
                                        Money::dollars(2000 * state.range(1)));
    for (Wish& wish : one.inquiry.wishes) {
        const Option& option = at(one.desk.book.options, wish.pick.option);
        const Money price = charge(option, wish.pick, one.inquiry.selection.plan).value_or(Money{});
        wish.weight = Decimal::billionths(std::max<std::int64_t>(price.count(), 1) * 10'000'000);
    }
    FitHome home;
    for (auto _ : state) {
        const std::clock_t end = std::clock() + 5 * CLOCKS_PER_SEC; // of work, not of waiting
        const FitAnswer answer =
            fit(Sitting(one.desk, one.inquiry), one.question, [&](const FitProgress& now) {
                return now.stage == FitStage::best && std::clock() < end;
            });
        home = answer.scenarios.front().homes.front();
    }
    report(state, home);
}
BENCHMARK(fit_worth_its_price)
    ->ArgsProduct({{1, 2, 3, 4}, {15, 30, 60, 90}})
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond);

} // namespace
