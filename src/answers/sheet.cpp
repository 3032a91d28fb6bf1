// Gathering a sheet out of the answers there are.
#include <quoin/answers/sheet.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

/// The first that can be had; the first where none can.
std::optional<std::size_t> front_of(const std::vector<ScenarioAnswer>& scenarios) {
    if (scenarios.empty()) return std::nullopt;
    const auto first = std::find_if(scenarios.begin(), scenarios.end(),
                                    [](const auto& each) { return each.available(); });
    return first == scenarios.end()
               ? 0
               : static_cast<std::size_t>(std::distance(scenarios.begin(), first));
}

} // namespace

SheetAnswer sheet(const Sitting& sitting, std::optional<std::size_t> scenario) {
    SheetAnswer answer{quote(sitting),         rooms(sitting),
                       site_as_drawn(sitting), sitting.book().community.color,
                       std::nullopt,           std::nullopt};
    answer.front = scenario ? scenario : front_of(answer.quote.scenarios);
    if (!answer.front) return answer;
    const ScenarioAnswer& quoted = answer.quote.scenarios.at(*answer.front);
    if (!quoted.available()) return answer;
    answer.cash = cash(sitting, *answer.front);
    ensure_equal(answer.cash->scenario.cash.needed(), quoted.cash.needed(),
                 "both parts of a sheet tell one cash");
    ensure_equal(answer.cash->scenario.monthly.total(), quoted.monthly.total(),
                 "both parts of a sheet tell one month");
    return answer;
}

} // namespace quoin
