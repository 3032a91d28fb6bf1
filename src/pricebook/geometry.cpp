// Exact geometry of outlines: which side, whether they cross, whether their insides overlap.
#include "geometry.hpp"

#include <algorithm>

#include <quoin/exact/rounding.hpp>

namespace quoin {
namespace {

Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }

Int128 cross(Point a, Point b) { return Int128{a.x} * b.y - Int128{a.y} * b.x; }
Int128 dot(Point a, Point b) { return Int128{a.x} * b.x + Int128{a.y} * b.y; }

/// 1: the place is to the left of the side; -1: to its right; 0: on the line through it.
int turn(const OutlineSide& side, Point place) {
    const Int128 product = cross(side.to - side.from, place - side.from);
    return product > 0 ? 1 : product < 0 ? -1 : 0;
}

/// Whether a place lies on a side, its ends counted.
bool is_on(Point place, const OutlineSide& side) {
    return turn(side, place) == 0 && dot(place - side.from, place - side.to) <= 0;
}

/// Whether two sides cross, each from one side of the other to its other side.
bool cross_through(const OutlineSide& a, const OutlineSide& b) {
    return turn(a, b.from) * turn(a, b.to) < 0 && turn(b, a.from) * turn(b, a.to) < 0;
}

bool touch(const OutlineSide& a, const OutlineSide& b) {
    return cross_through(a, b) || is_on(a.from, b) || is_on(a.to, b) || is_on(b.from, a) ||
           is_on(b.to, a);
}

/// Whether the next side runs back over this one.
bool folds_back(const OutlineSide& side, const OutlineSide& next) {
    return turn(side, next.to) == 0 && dot(side.to - side.from, next.to - next.from) < 0;
}

Outline counterclockwise(Outline outline) {
    if (twice_area(outline) < 0) std::reverse(outline.begin(), outline.end());
    return outline;
}

Outline doubled(Outline outline) {
    for (Point& corner : outline) corner = corner + corner;
    return outline;
}

/// The pieces that the corners of the other outline cut a side into.
std::vector<OutlineSide> pieces(const OutlineSide& side, const Outline& other) {
    std::vector<Point> cuts{side.from, side.to};
    for (const Point corner : other) {
        if (is_on(corner, side)) cuts.push_back(corner);
    }
    const Point way = side.to - side.from;
    std::sort(cuts.begin(), cuts.end(), [&](Point a, Point b) { return dot(a - b, way) < 0; });
    cuts.erase(std::unique(cuts.begin(), cuts.end()), cuts.end());
    std::vector<OutlineSide> found;
    for (std::size_t i = 1; i < cuts.size(); ++i) found.push_back({cuts[i - 1], cuts[i]});
    return found;
}

/// Whether the other outline has its inside along one of these sides, on the left of it. No side
/// crosses another, so that a piece lies as its middle does; doubled, the middle is a whole place.
bool runs_along_inside(const std::vector<OutlineSide>& sides, const Outline& other) {
    const Outline twice = doubled(other);
    const std::vector<OutlineSide> twice_sides = sides_of(twice);
    for (const OutlineSide& side : sides) {
        for (const OutlineSide& piece : pieces(side, other)) {
            const Point middle = piece.from + piece.to;
            const Lies where = lies(middle, twice);
            if (where == Lies::inside) return true;
            if (where == Lies::outside) continue;
            const auto along =
                std::find_if(twice_sides.begin(), twice_sides.end(),
                             [&](const OutlineSide& one) { return is_on(middle, one); });
            if (dot(along->to - along->from, piece.to - piece.from) > 0) return true;
        }
    }
    return false;
}

bool extents_overlap(const Extent& a, const Extent& b) {
    return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

bool any_cross(const std::vector<OutlineSide>& some, const std::vector<OutlineSide>& others) {
    return std::any_of(some.begin(), some.end(), [&](const OutlineSide& one) {
        return std::any_of(others.begin(), others.end(),
                           [&](const OutlineSide& other) { return cross_through(one, other); });
    });
}

/// Whether a place is nearer to the line of a side than a hundredth, between its ends.
bool is_along(Point place, const OutlineSide& side) {
    const Point way = side.to - side.from;
    const Int128 off = cross(way, place - side.from);
    const Int128 on = dot(way, place - side.from);
    const Int128 length_squared = dot(way, way);
    return off * off < length_squared && on >= 0 && on <= length_squared;
}

} // namespace

std::int64_t twice_area(const Outline& outline) {
    Int128 sum = 0;
    for (const OutlineSide& side : sides_of(outline)) sum += cross(side.from, side.to);
    return static_cast<std::int64_t>(sum);
}

std::vector<OutlineSide> sides_of(const Outline& outline) {
    std::vector<OutlineSide> sides;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        sides.push_back({outline[i], outline[(i + 1) % outline.size()]});
    }
    return sides;
}

Extent extent_of(const Outline& outline) {
    Extent extent{outline.front(), outline.front()};
    for (const Point corner : outline) {
        extent.low = {std::min(extent.low.x, corner.x), std::min(extent.low.y, corner.y)};
        extent.high = {std::max(extent.high.x, corner.x), std::max(extent.high.y, corner.y)};
    }
    return extent;
}

bool is_simple(const Outline& outline) {
    const std::vector<OutlineSide> sides = sides_of(outline);
    const std::size_t n = sides.size();
    if (n < 3 || twice_area(outline) == 0) return false;
    for (std::size_t i = 0; i < n; ++i) {
        if (sides[i].from == sides[i].to || folds_back(sides[i], sides[(i + 1) % n])) return false;
        for (std::size_t j = i + 2; j < n; ++j) {
            const bool follows = i == 0 && j == n - 1;
            if (!follows && touch(sides[i], sides[j])) return false;
        }
    }
    return true;
}

Outline plainest(const Outline& outline) {
    const Outline around = counterclockwise(outline);
    const std::size_t n = around.size();
    Outline plain;
    for (std::size_t i = 0; i < n; ++i) {
        const OutlineSide before{around[(i + n - 1) % n], around[i]};
        if (turn(before, around[(i + 1) % n]) != 0) plain.push_back(around[i]);
    }
    const auto first = std::min_element(plain.begin(), plain.end(), [](Point a, Point b) {
        return a.y != b.y ? a.y < b.y : a.x < b.x;
    });
    std::rotate(plain.begin(), first, plain.end());
    return plain;
}

Lies lies(Point place, const Outline& outline) {
    bool inside = false;
    for (const OutlineSide& side : sides_of(outline)) {
        if (is_on(place, side)) return Lies::on_line;
        const bool rises = side.from.y <= place.y && side.to.y > place.y;
        const bool falls = side.to.y <= place.y && side.from.y > place.y;
        if ((rises && turn(side, place) > 0) || (falls && turn(side, place) < 0)) inside = !inside;
    }
    return inside ? Lies::inside : Lies::outside;
}

bool overlap(const Outline& one, const Outline& other) {
    if (!extents_overlap(extent_of(one), extent_of(other))) return false;
    const Outline a = counterclockwise(one);
    const Outline b = counterclockwise(other);
    const std::vector<OutlineSide> sides_a = sides_of(a);
    const std::vector<OutlineSide> sides_b = sides_of(b);
    return any_cross(sides_a, sides_b) || runs_along_inside(sides_a, b) ||
           runs_along_inside(sides_b, a);
}

bool in_one_side(Point from, Point to, const Outline& outline) {
    const std::vector<OutlineSide> sides = sides_of(plainest(outline));
    return std::any_of(sides.begin(), sides.end(), [&](const OutlineSide& side) {
        return is_along(from, side) && is_along(to, side);
    });
}

} // namespace quoin
