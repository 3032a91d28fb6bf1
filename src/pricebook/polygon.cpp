// Outlines in exact whole numbers.
#include "polygon.hpp"

#include <algorithm>

namespace quoin {
namespace {

struct Side {
    Point from;
    Point to;
};

Side side_of(const Outline& outline, std::size_t corner) {
    return {outline[corner], outline[(corner + 1) % outline.size()]};
}

int sign(Int128 value) { return value > 0 ? 1 : value < 0 ? -1 : 0; }

Int128 square(std::int64_t value) { return Int128{value} * value; }

/// Precondition: the point is on the line through the side.
bool beside(const Side& side, const Point& point) {
    return std::min(side.from.x, side.to.x) <= point.x &&
           point.x <= std::max(side.from.x, side.to.x) &&
           std::min(side.from.y, side.to.y) <= point.y &&
           point.y <= std::max(side.from.y, side.to.y);
}

bool lies_on(const Side& side, const Point& point) {
    return turn(side.from, side.to, point) == 0 && beside(side, point);
}

bool touch(const Side& one, const Side& other) {
    const int a = sign(turn(one.from, one.to, other.from));
    const int b = sign(turn(one.from, one.to, other.to));
    const int c = sign(turn(other.from, other.to, one.from));
    const int d = sign(turn(other.from, other.to, one.to));
    if (a * b < 0 && c * d < 0) return true;
    return lies_on(one, other.from) || lies_on(one, other.to) || lies_on(other, one.from) ||
           lies_on(other, one.to);
}

/// Whether a point is farther from the line through a side than the slack, and on which hand.
int clear_hand(const Side& side, const Point& point, std::int64_t slack) {
    const Int128 area = turn(side.from, side.to, point);
    const std::int64_t length =
        root_of(square(side.to.x - side.from.x) + square(side.to.y - side.from.y));
    return (area < 0 ? -area : area) > Int128{length} * slack ? sign(area) : 0;
}

bool cross(const Side& one, const Side& other, std::int64_t slack) {
    return clear_hand(one, other.from, slack) * clear_hand(one, other.to, slack) < 0 &&
           clear_hand(other, one.from, slack) * clear_hand(other, one.to, slack) < 0;
}

bool near(const Side& side, const Point& point, std::int64_t slack) {
    if (clear_hand(side, point, slack) != 0) return false;
    const Side room{
        {std::min(side.from.x, side.to.x) - slack, std::min(side.from.y, side.to.y) - slack},
        {std::max(side.from.x, side.to.x) + slack, std::max(side.from.y, side.to.y) + slack}};
    return beside(room, point);
}

/// In the outline, and not within the slack of its line.
bool well_in(const Outline& outline, const Point& point, std::int64_t slack) {
    if (!lies_in(outline, point)) return false;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        if (near(side_of(outline, i), point, slack)) return false;
    }
    return true;
}

/// Points of an outline that tell where it lies: corners, middles of sides, and what is in it.
Outline witnesses(const Outline& outline) {
    Outline points = outline;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point& a = outline[i];
        const Point& b = outline[(i + 1) % outline.size()];
        const Point& c = outline[(i + 2) % outline.size()];
        points.push_back({(a.x + b.x) / 2, (a.y + b.y) / 2});
        const Point inner{(a.x + b.x + c.x) / 3, (a.y + b.y + c.y) / 3};
        if (lies_in(outline, inner)) points.push_back(inner);
    }
    return points;
}

bool reaches_into(const Outline& one, const Outline& other, std::int64_t slack) {
    const Outline points = witnesses(one);
    return std::any_of(points.begin(), points.end(),
                       [&](const Point& point) { return well_in(other, point, slack); });
}

} // namespace

Int128 turn(const Point& a, const Point& b, const Point& c) {
    return Int128{b.x - a.x} * (c.y - a.y) - Int128{b.y - a.y} * (c.x - a.x);
}

bool is_simple(const Outline& outline) {
    const std::size_t count = outline.size();
    if (count < 3) return false;
    for (std::size_t i = 0; i < count; ++i) {
        const Side side = side_of(outline, i);
        if (side.from == side.to) return false;
        const Side next = side_of(outline, (i + 1) % count);
        if (lies_on(side, next.to) || lies_on(next, side.from)) return false;
        for (std::size_t j = i + 2; j < count; ++j) {
            if (i == 0 && j == count - 1) continue; // the two meet in the first corner
            if (touch(side, side_of(outline, j))) return false;
        }
    }
    return true;
}

bool runs_clockwise(const Outline& outline) {
    Int128 area = 0;
    for (std::size_t i = 1; i + 1 < outline.size(); ++i) {
        area += turn(outline[0], outline[i], outline[i + 1]);
    }
    return area < 0;
}

bool lies_in(const Outline& outline, const Point& point) {
    bool in = false;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Side side = side_of(outline, i);
        if (lies_on(side, point)) return false;
        if ((side.from.y > point.y) == (side.to.y > point.y)) continue;
        const bool up = side.to.y > side.from.y;
        if ((turn(side.from, side.to, point) > 0) == up) in = !in;
    }
    return in;
}

bool overlap(const Outline& one, const Outline& other, std::int64_t slack) {
    for (std::size_t i = 0; i < one.size(); ++i) {
        for (std::size_t j = 0; j < other.size(); ++j) {
            if (cross(side_of(one, i), side_of(other, j), slack)) return true;
        }
    }
    return reaches_into(one, other, slack) || reaches_into(other, one, slack);
}

std::int64_t root_of(Int128 square) {
    std::int64_t low = 0;
    std::int64_t high = std::int64_t{1} << 62;
    while (low < high) {
        const std::int64_t middle = high - (high - low) / 2;
        if (Int128{middle} * middle <= square)
            low = middle;
        else
            high = middle - 1;
    }
    return low;
}

} // namespace quoin
