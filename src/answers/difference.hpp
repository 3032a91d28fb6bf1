// The difference between two figures of one scenario, and the reasons where it jumps.
#pragma once

#include <vector>

#include <quoin/answers/adds.hpp>

namespace quoin {

[[nodiscard]] Added difference(const ScenarioRules& rules, const LoanFigures& before,
                               const LoanFigures& after);

[[nodiscard]] std::vector<Added> differences(const Sitting& sitting,
                                             const std::vector<LoanFigures>& before,
                                             const std::vector<LoanFigures>& after);

} // namespace quoin
