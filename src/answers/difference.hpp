// The difference between two figures of one scenario, and the reasons where it jumps.
#pragma once

#include <vector>

#include <quoin/answers/adds.hpp>

namespace quoin {

/// The amounts alone, without the reasons: also between two ways to pay.
[[nodiscard]] Added amounts_between(const LoanFigures& before, const LoanFigures& after);

[[nodiscard]] Added difference(const ScenarioRules& rules, const LoanFigures& before,
                               const LoanFigures& after);

[[nodiscard]] std::vector<Added> differences(const Sitting& sitting,
                                             const std::vector<LoanFigures>& before,
                                             const std::vector<LoanFigures>& after);

} // namespace quoin
