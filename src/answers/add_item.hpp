// What one option adds to a home as it stands: shared by the questions that say so.
#pragma once

#include <string>
#include <vector>

#include <quoin/answers/adds.hpp>

namespace quoin {

/// A home as it stands, priced and figured under every scenario.
struct Standpoint {
    PricedHome home;
    std::vector<LoanFigures> figures;
};
[[nodiscard]] Standpoint standpoint(const Sitting& sitting, const Selection& selection);

/// A pick that is not in the home is added, with what it needs; one that is there is taken out.
[[nodiscard]] AddsItem add_item(const Sitting& sitting, const Standpoint& now, const Pick& pick);

/// Empty for -1, the mark of kinds without levels.
[[nodiscard]] std::string level_name(const Option& option, int level);

} // namespace quoin
