// Gathering a sheet out of the answers there are.
#include <quoin/answers/sheet.hpp>

#include <quoin/exact/broken.hpp>

namespace quoin {

SheetAnswer sheet(const Sitting& sitting, std::optional<std::size_t> scenario) {
    SheetAnswer answer{quote(sitting), rooms(sitting), std::nullopt};
    if (scenario) {
        answer.quote.scenarios = {answer.quote.scenarios.at(*scenario)};
        answer.cash = cash(sitting, *scenario);
        const ScenarioAnswer& quoted = answer.quote.scenarios.front();
        ensure_equal(answer.cash->scenario.cash.needed(), quoted.cash.needed(),
                     "both parts of a sheet tell one cash");
        ensure_equal(answer.cash->scenario.monthly.total(), quoted.monthly.total(),
                     "both parts of a sheet tell one month");
    }
    return answer;
}

} // namespace quoin
