// Outlines in the plane, exactly: whole coordinates, products in 128 bits, nothing rounded.
#pragma once

#include <quoin/pricebook/drawing.hpp>

namespace quoin {

/// From a corner to the next.
struct OutlineSide {
    Point from;
    Point to;
};

/// The smallest upright rectangle around an outline.
struct Extent {
    Point low;
    Point high;
};

/// Where a place lies, seen from an outline.
enum class Lies { outside, on_line, inside };

/// The sides in their order; the last one joins the first corner.
[[nodiscard]] std::vector<OutlineSide> sides_of(const Outline& outline);

[[nodiscard]] Extent extent_of(const Outline& outline); ///< of one corner or more

/// Three corners or more that enclose something; sides meet only where one follows the other.
[[nodiscard]] bool is_simple(const Outline& outline);

// The following hold of simple outlines.

/// The same line counterclockwise from its lowest corner (of those, the leftmost), without corners
/// that lie in a straight side: two outlines of one shape in one place become equal.
[[nodiscard]] Outline plainest(const Outline& outline);

[[nodiscard]] Lies lies(Point place, const Outline& outline);

/// Whether both have a piece of ground in common. Outlines that only touch do not.
[[nodiscard]] bool overlap(const Outline& one, const Outline& other);

/// Whether both ends lie on one straight side, to the nearest hundredth (a slanted side seldom runs
/// through whole hundredths).
[[nodiscard]] bool in_one_side(Point from, Point to, const Outline& outline);

} // namespace quoin
