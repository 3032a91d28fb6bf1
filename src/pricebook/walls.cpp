// Standing walls on the lines between rooms.
#include "walls.hpp"

#include <algorithm>
#include <cstdlib>
#include <optional>

#include <quoin/exact/rounding.hpp>

namespace quoin {
namespace {

Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
std::int64_t cross(Point a, Point b) { return a.x * b.y - a.y * b.x; }
std::int64_t dot(Point a, Point b) { return a.x * b.x + a.y * b.y; }

std::int64_t scaled(std::int64_t value, std::int64_t times, std::int64_t parts) {
    if (parts < 0) return scaled(value, -times, -parts);
    return multiply_divide(value, times, parts, Rounding::half_away);
}

/// The whole number next to the length.
std::int64_t length_of(Point direction) {
    if (direction.x == 0 || direction.y == 0) return std::abs(direction.x + direction.y);
    const std::int64_t square = dot(direction, direction);
    std::int64_t root = std::max(std::abs(direction.x), std::abs(direction.y));
    for (std::int64_t next = (root + square / root) / 2; next != root;) {
        const std::int64_t before = root;
        root = next;
        next = (root + square / root) / 2;
        if (next == before) break; // it swings between two neighbors
    }
    return root;
}

/// Where the lines through two places meet. Precondition: the directions are not parallel.
Point meeting(Point a, Point along_a, Point b, Point along_b) {
    const std::int64_t parts = cross(along_a, along_b);
    const std::int64_t times = cross(b - a, along_b);
    return {a.x + scaled(along_a.x, times, parts), a.y + scaled(along_a.y, times, parts)};
}

/// Whether a place is on the line through another, to a hundredth: few of a slanted one are whole.
bool is_beside(Point place, Point on_line, Point along) {
    return std::abs(cross(along, place - on_line)) <= length_of(along);
}

/// A stretch of a side, by how far along it its ends are.
struct Stretch {
    std::int64_t begin = 0;
    std::int64_t end = 0;
    Point from;
    Point to;
};

/// Less of a wall than this is none where a doorless opening comes near its end.
constexpr std::int64_t least_post = 60;

} // namespace

Point aside(Point place, Point direction, std::int64_t left) {
    const std::int64_t length = length_of(direction);
    return {place.x - scaled(direction.y, left, length),
            place.y + scaled(direction.x, left, length)};
}

namespace {

/// What a side shares with the side of another room, which runs the other way.
std::optional<Stretch> shared(Point from, Point to, Point other_from, Point other_to) {
    const Point along = to - from;
    if (cross(along, other_to - other_from) != 0 || cross(along, other_from - from) != 0) {
        return std::nullopt;
    }
    Stretch stretch{0, dot(along, along), from, to};
    const std::int64_t begin = dot(other_to - from, along);
    const std::int64_t end = dot(other_from - from, along);
    if (begin > stretch.begin) {
        stretch.begin = begin;
        stretch.from = other_to;
    }
    if (end < stretch.end) {
        stretch.end = end;
        stretch.to = other_from;
    }
    return stretch.begin < stretch.end ? std::optional(stretch) : std::nullopt;
}

/// What of a side is left beside these.
std::vector<Stretch> rest_of(Point from, Point to, std::vector<Stretch> taken) {
    std::sort(taken.begin(), taken.end(),
              [](const Stretch& a, const Stretch& b) { return a.begin < b.begin; });
    std::vector<Stretch> rest;
    Stretch open{0, 0, from, {}};
    for (const Stretch& one : taken) {
        if (one.begin > open.begin) rest.push_back({open.begin, one.begin, open.from, one.from});
        if (one.end > open.begin) open = {one.end, 0, one.to, {}};
    }
    const Point along = to - from;
    if (dot(along, along) > open.begin) {
        rest.push_back({open.begin, dot(along, along), open.from, to});
    }
    return rest;
}

/// What of a room's side has no other room on its other side.
std::vector<Stretch> outer_stretches(Point from, Point to, std::size_t room,
                                     const std::vector<Outline>& rooms) {
    std::vector<Stretch> inner;
    for (std::size_t other = 0; other < rooms.size(); ++other) {
        if (other == room) continue;
        const Outline& beside = rooms[other];
        for (std::size_t i = 0; i < beside.size(); ++i) {
            const auto both = shared(from, to, beside[i], beside[(i + 1) % beside.size()]);
            if (both) inner.push_back(*both);
        }
    }
    return rest_of(from, to, std::move(inner));
}

/// Joins what follows on each other to closed lines.
std::vector<Outline> joined_lines(std::vector<Stretch> stretches) {
    std::vector<Outline> lines;
    while (!stretches.empty()) {
        Outline line{stretches.back().from};
        Point end = stretches.back().to;
        stretches.pop_back();
        while (end != line.front()) {
            const auto next =
                std::find_if(stretches.begin(), stretches.end(),
                             [&](const Stretch& stretch) { return stretch.from == end; });
            if (next == stretches.end()) break;
            line.push_back(end);
            end = next->to;
            stretches.erase(next);
        }
        if (line.size() > 2) lines.push_back(plainest(line));
    }
    return lines;
}

} // namespace

Walls::Walls(const std::vector<WalledRoom>& rooms) {
    std::vector<Outline> closed;
    for (const WalledRoom& room : rooms) {
        if (!room.open) closed.push_back(plainest(room.outline));
    }
    std::vector<Stretch> faces;
    std::size_t place = 0;
    for (const WalledRoom& room : rooms) {
        if (room.open) {
            clear_.push_back(plainest(room.outline));
            continue;
        }
        const Outline& outline = closed[place];
        std::vector<Side> sides;
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Point from = outline[i];
            const Point to = outline[(i + 1) % outline.size()];
            const std::vector<Stretch> outer = outer_stretches(from, to, place, closed);
            // One face a side: it never jumps where a wall that was an inner one goes on outside.
            sides.push_back({from, to, outer.empty() ? half_inner_wall : outer_wall, {}, {}});
            faces.insert(faces.end(), outer.begin(), outer.end());
        }
        clear_.push_back(clear_within(sides));
        sides_.insert(sides_.end(), sides.begin(), sides.end());
        ++place;
    }
    around_ = joined_lines(std::move(faces));
}

Outline Walls::clear_within(std::vector<Side>& sides) {
    Outline clear;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        Side& before = sides[(i + sides.size() - 1) % sides.size()];
        Side& after = sides[i];
        const Point along = before.to - before.from;
        const Point on = after.to - after.from;
        clear.push_back(meeting(aside(before.from, along, before.inward), along,
                                aside(after.from, on, after.inward), on));
        before.clear_to = after.clear_from = clear.back();
    }
    return clear;
}

WallCut Walls::cut(Point from, Point to, bool framed) const {
    WallCut cut{from, to, 0, 0};
    const Point along = to - from;
    const std::int64_t length = length_of(along);
    const auto far = [&](Point place) { return scaled(dot(place - from, along), 1, length); };
    std::int64_t begin = -length;
    std::int64_t end = 2 * length;
    for (const Side& side : sides_) {
        if (!is_beside(side.from, from, along) || !is_beside(side.to, from, along)) continue;
        if (std::max(far(side.from), far(side.to)) <= 0) continue;
        if (std::min(far(side.from), far(side.to)) >= length) continue;
        const bool same_way = dot(along, side.to - side.from) > 0;
        (same_way ? cut.left : cut.right) = side.inward;
        begin = std::max(begin, std::min(far(side.clear_from), far(side.clear_to)));
        end = std::min(end, std::max(far(side.clear_from), far(side.clear_to)));
    }
    const std::int64_t post = framed ? 0 : least_post;
    const std::int64_t first = begin > -post ? begin : 0;
    const std::int64_t last = end < length + post ? end : length;
    if (first < last) {
        const auto place = [&](std::int64_t how_far) {
            return Point{from.x + scaled(along.x, how_far, length),
                         from.y + scaled(along.y, how_far, length)};
        };
        cut.from = place(first);
        cut.to = place(last);
    }
    return cut;
}

Point Walls::corner_at(Point place) const {
    for (const Side& side : sides_) {
        const Point off = side.from - place;
        if (dot(off, off) < least_post * least_post) return side.from;
    }
    return place;
}

} // namespace quoin
