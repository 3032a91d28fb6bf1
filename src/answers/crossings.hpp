// Where one loan's cost passes another's.
#pragma once

#include <optional>
#include <vector>

#include <quoin/answers/compare.hpp>

namespace quoin {

/// The first month from which `later` has cost and owes no more than `first`; nothing where it
/// never does within either loan's life. Precondition: it costs more at closing.
[[nodiscard]] std::optional<int> overtaking_month(const LoanFigures& first,
                                                  const LoanFigures& later);

[[nodiscard]] std::vector<Overtake> overtakes_among(const std::vector<LoanFigures>& figures);

/// For each scenario that pays points for a rung of the ladder, the same without points beside it.
[[nodiscard]] std::vector<PointsPayback> points_paybacks(const Sitting& sitting,
                                                         const PricedHome& home,
                                                         const std::vector<LoanFigures>& figures);

[[nodiscard]] std::vector<YearPoint> curve_of(const LoanFigures& figures);

} // namespace quoin
