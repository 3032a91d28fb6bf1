// Reading lengths in feet, as whole hundredths.
#pragma once

#include <cstdint>
#include <optional>

#include <quoin/pricebook/drawing.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {

/// From so many feet to so many.
struct FeetRange {
    int least = 0;
    int most = 0;
};

/// Hundredths of a foot to the nearest: a third of a foot (four inches) has no end in decimals.
/// Nothing with a problem where it is out of the range.
[[nodiscard]] std::optional<std::int64_t> as_feet(const Spot& spot, FeetRange range,
                                                  Findings& findings);

/// A place as [x, y], each in the range.
[[nodiscard]] std::optional<Point> as_place(const Spot& spot, FeetRange range, Findings& findings);

} // namespace quoin
