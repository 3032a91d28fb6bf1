// The same 360 months from QuantLib: notionals by its own sinking schedule, then every cash flow.
#include <benchmark/benchmark.h>
#include <ql/instruments/bonds/amortizingfixedratebond.hpp>
#include <ql/settings.hpp>
#include <ql/time/calendars/nullcalendar.hpp>
#include <ql/time/daycounters/thirty360.hpp>

namespace {

void schedule_quantlib(benchmark::State& state) {
    using namespace QuantLib;
    const Date start(1, July, 2027);
    Settings::instance().evaluationDate() = start;
    const Schedule dates = sinkingSchedule(start, Period(30, Years), Monthly, NullCalendar());
    double loan = 250'000.0;
    for (auto _ : state) {
        loan += 1.0; // no run repeats the last
        const std::vector<Real> notionals =
            sinkingNotionals(Period(30, Years), Monthly, 0.06375, loan);
        const AmortizingFixedRateBond bond(0, notionals, dates, {0.06375},
                                           Thirty360(Thirty360::BondBasis));
        Real sum = 0.0;
        for (const auto& flow : bond.cashflows()) sum += flow->amount();
        benchmark::DoNotOptimize(sum);
    }
}
BENCHMARK(schedule_quantlib);

} // namespace
