// Walls: what stands between the rooms of a floor, and the clear floor within them.
//
//   const Walls walls({{kitchen.outline}, {porch.outline, true}});
//   walls.clear(0)    ->  the kitchen from wall to wall
//   walls.cut(a, b)   ->  how far the wall goes to either side of an opening from a to b
//
// A wall stands inward of an outline where nothing but the open air, or an open room, is on its
// other side; between two rooms it stands in the middle of the line that they share.
#pragma once

#include <cstdint>
#include <vector>

#include "geometry.hpp"
#include <quoin/exact/decimal.hpp>
#include <quoin/pricebook/drawing.hpp>

namespace quoin {

inline constexpr std::int64_t outer_wall = 50;      ///< 6 inches, as framed and sheathed
inline constexpr std::int64_t half_inner_wall = 19; ///< of 4 1/2 inches

struct WalledRoom {
    Outline outline;
    bool open = false; ///< has no walls of its own
};

/// An opening in a wall: its ends between the faces of the walls that it meets, and how far the
/// wall goes to the left and to the right of the way from one to the other.
struct WallCut {
    Point from;
    Point to;
    std::int64_t left = 0;
    std::int64_t right = 0;
};

class Walls {
  public:
    /// Precondition: outlines are simple and do not overlap.
    explicit Walls(const std::vector<WalledRoom>& rooms);

    /// The floor of a room between its walls, counterclockwise; of an open room all of it.
    [[nodiscard]] const Outline& clear(std::size_t room) const { return clear_[room]; }
    /// The outer faces of all walls, as closed lines.
    [[nodiscard]] const std::vector<Outline>& around() const { return around_; }
    /// Precondition: from and to are two places. An opening without a frame goes on to the face of
    /// the next wall where less than a post would be left between them.
    [[nodiscard]] WallCut cut(Point from, Point to, bool framed = true) const;
    /// The corner of walls that is less than a post away, or the place itself.
    [[nodiscard]] Point corner_at(Point place) const;

  private:
    struct Side {
        Point from;
        Point to; ///< the room is to the left
        std::int64_t inward = 0;
        Point clear_from;
        Point clear_to;
    };

    /// Tells each side where its face ends.
    static Outline clear_within(std::vector<Side>& sides);

    std::vector<Outline> clear_;
    std::vector<Outline> around_;
    std::vector<Side> sides_; ///< of rooms that are not open
};

/// The place so far to the left of a direction. Precondition: the direction is not nothing.
[[nodiscard]] Point aside(Point place, Point direction, std::int64_t left);

[[nodiscard]] inline std::int64_t width_of(const Extent& extent) {
    return extent.high.x - extent.low.x;
}
[[nodiscard]] inline std::int64_t depth_of(const Extent& extent) {
    return extent.high.y - extent.low.y;
}

/// A length as it is told.
[[nodiscard]] inline Decimal in_feet(std::int64_t hundredths) {
    return Decimal::billionths(hundredths * Decimal::hundredth);
}

} // namespace quoin
