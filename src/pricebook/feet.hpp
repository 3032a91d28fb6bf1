// Reading lengths in feet, as whole hundredths.
#pragma once

#include <cstdint>
#include <optional>

#include <quoin/pricebook/drawing.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {

/// Hundredths of a foot to the nearest: a third of a foot (four inches) has no end in decimals.
/// From zero to this many feet; nothing with a problem where it is not.
[[nodiscard]] std::optional<std::int64_t> as_feet(const Spot& spot, int most, Findings& findings);

/// A place as [x, y], each of zero to this many feet.
[[nodiscard]] std::optional<Point> as_place(const Spot& spot, int most, Findings& findings);

} // namespace quoin
