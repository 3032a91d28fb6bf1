// Lines that lie within a slack of one another, in whole numbers.
#include "ground.hpp"

#include <algorithm>

namespace quoin {
namespace {

Int128 area_beside(const OutlineSide& side, const Point& place) {
    return Int128{side.to.x - side.from.x} * (place.y - side.from.y) -
           Int128{side.to.y - side.from.y} * (place.x - side.from.x);
}

/// 1 where a place is to the left of the line through a side by more than the slack, -1 to its
/// right, 0 within the slack.
int hand(const OutlineSide& side, const Point& place, std::int64_t slack) {
    const Int128 area = area_beside(side, place);
    const Int128 least = Int128{length_of(side)} * slack;
    return area > least ? 1 : area < -least ? -1 : 0;
}

bool cross_clearly(const OutlineSide& one, const OutlineSide& other, std::int64_t slack) {
    return hand(one, other.from, slack) * hand(one, other.to, slack) < 0 &&
           hand(other, one.from, slack) * hand(other, one.to, slack) < 0;
}

bool is_near(const Point& place, const OutlineSide& side, std::int64_t slack) {
    const Extent room = extent_of({side.from, side.to});
    return hand(side, place, slack) == 0 && place.x >= room.low.x - slack &&
           place.x <= room.high.x + slack && place.y >= room.low.y - slack &&
           place.y <= room.high.y + slack;
}

/// Inside, and farther than the slack from every side.
bool is_well_inside(const Point& place, const Outline& outline, std::int64_t slack) {
    const std::vector<OutlineSide> sides = sides_of(outline);
    return lies(place, outline) == Lies::inside &&
           std::none_of(sides.begin(), sides.end(),
                        [&](const OutlineSide& side) { return is_near(place, side, slack); });
}

/// Corners, middles of sides, and places between three corners that are inside.
Outline places_of(const Outline& outline) {
    Outline places = outline;
    const std::size_t n = outline.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Point& a = outline[i];
        const Point& b = outline[(i + 1) % n];
        const Point& c = outline[(i + 2) % n];
        places.push_back({a.x + (b.x - a.x) / 2, a.y + (b.y - a.y) / 2});
        const Point between{(a.x + b.x + c.x) / 3, (a.y + b.y + c.y) / 3};
        if (lies(between, outline) == Lies::inside) places.push_back(between);
    }
    return places;
}

bool reaches_into(const Outline& one, const Outline& other, std::int64_t slack) {
    const Outline places = places_of(one);
    return std::any_of(places.begin(), places.end(),
                       [&](const Point& place) { return is_well_inside(place, other, slack); });
}

} // namespace

bool overlap_by_more(const Outline& one, const Outline& other, std::int64_t slack) {
    if (!overlap(one, other)) return false;
    for (const OutlineSide& a : sides_of(one)) {
        for (const OutlineSide& b : sides_of(other)) {
            if (cross_clearly(a, b, slack)) return true;
        }
    }
    return reaches_into(one, other, slack) || reaches_into(other, one, slack);
}

std::int64_t length_of(const OutlineSide& side) {
    const Int128 dx = side.to.x - side.from.x;
    const Int128 dy = side.to.y - side.from.y;
    return root_of(dx * dx + dy * dy);
}

std::int64_t root_of(Int128 square) {
    std::int64_t low = 0;
    std::int64_t high = std::int64_t{1} << 62;
    while (low < high) {
        const std::int64_t middle = high - (high - low) / 2;
        const bool within = Int128{middle} * middle <= square;
        low = within ? middle : low;
        high = within ? high : middle - 1;
    }
    return low;
}

} // namespace quoin
