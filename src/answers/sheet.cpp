// Gathering a sheet out of the answers there are.
#include <quoin/answers/sheet.hpp>

namespace quoin {

SheetAnswer sheet(const Sitting& sitting, std::optional<std::size_t> scenario) {
    SheetAnswer answer{quote(sitting), std::nullopt};
    if (scenario) {
        answer.quote.scenarios = {answer.quote.scenarios.at(*scenario)};
        answer.cash = cash(sitting, *scenario);
    }
    return answer;
}

} // namespace quoin
