// Reading when and by how much an adjustable rate may change.
#include <quoin/lending/adjustable_plan.hpp>

#include <quoin/lending/reading.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {
namespace {

constexpr int longest_initial = 240; ///< months
constexpr int longest_reset = 120;

Percent read_cap(Reader& item, std::string_view key) {
    const Percent cap = item.percent(key);
    if (cap < Percent{}) item.report(problems::points_below_zero(item.spot(key)));
    return cap;
}

} // namespace

AdjustablePlan read_adjustable_plan(Reader& item) {
    AdjustablePlan plan{};
    plan.initial = Months(item.whole("initial_months", 1, longest_initial));
    plan.reset = Months(item.whole("reset_months", 1, longest_reset));
    item.object(
        "caps",
        [&](Reader& caps) {
            plan.caps.first = read_cap(caps, "first");
            plan.caps.periodic = read_cap(caps, "periodic");
            plan.caps.life = read_cap(caps, "life");
        },
        true);
    plan.source = item.text("source");
    item.object("qualifying", [&](Reader& qualifying) {
        plan.qualifying_over_initial = read_cap(qualifying, "over_initial");
        plan.qualifying_source = qualifying.text("source");
    });
    return plan;
}

} // namespace quoin
