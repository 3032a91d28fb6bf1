// What loans have cost over the months, and which of two has cost less when.
#pragma once

#include <vector>

#include <quoin/answers/compare.hpp>

namespace quoin {

/// Each pair of scenarios that can be had, in the inquiry's order.
[[nodiscard]] std::vector<LoanOrder> orders_among(const std::vector<LoanFigures>& figures);

/// For each scenario that pays points for a rung of the ladder, the same without points beside it.
[[nodiscard]] std::vector<PointsPayback> points_paybacks(const Sitting& sitting,
                                                         const PricedHome& home,
                                                         const std::vector<LoanFigures>& figures);

[[nodiscard]] std::vector<YearPoint> curve_of(const LoanFigures& figures);

} // namespace quoin
