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

/// Of each scenario, how much more has been paid and is owed at the end of each year than under one
/// of them, through the longest loan. The costs of the home go on when a loan is paid off.
[[nodiscard]] std::vector<std::vector<YearPoint>>
apart_from(const std::vector<LoanFigures>& figures, std::size_t against);

} // namespace quoin
