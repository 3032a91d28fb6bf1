// Finding room on the sheet of a map.
#include "map_sheet.hpp"

#include <algorithm>
#include <array>

#include <quoin/exact/rounding.hpp>

namespace quoin {
namespace {

/// Around the lots, and below them, where the scale stands: 30 and 46 feet.
constexpr std::int64_t margin = 3000;
constexpr std::int64_t foot = 4600;
/// Below one lot alone, whose street may lie there and have its name in it: 28 feet.
constexpr std::int64_t street = 2800;
/// How many places are tried along a line, and across an outline each way.
constexpr std::int64_t tries = 24;

Point between(const Point& from, const Point& to, std::int64_t part, std::int64_t parts) {
    return {from.x + (to.x - from.x) / parts * part, from.y + (to.y - from.y) / parts * part};
}

/// How far an outline goes on to both sides of a place on its level; nothing outside of it.
std::optional<Interval> level_room(const Outline& outline, const Point& place) {
    std::int64_t crossed = 0;
    std::optional<std::int64_t> before;
    std::optional<std::int64_t> after;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point& a = outline[i];
        const Point& b = outline[(i + 1) % outline.size()];
        if ((a.y > place.y) == (b.y > place.y)) continue;
        const std::int64_t x =
            a.x + multiply_divide(b.x - a.x, (place.y - a.y) * (b.y > a.y ? 1 : -1),
                                  std::abs(b.y - a.y), Rounding::half_away);
        if (x <= place.x) {
            ++crossed;
            before = std::max(before.value_or(x), x);
        } else {
            after = std::min(after.value_or(x), x);
        }
    }
    if (crossed % 2 == 0 || !before || !after) return std::nullopt;
    return Interval{*before, *after};
}

/// The least room to either side of a place, over the height of a name.
std::int64_t room_about(const Outline& outline, const Point& place, std::int64_t height,
                        const Interval& sight) {
    std::int64_t least = sight.length();
    for (const std::int64_t off : {-height, std::int64_t{0}, height}) {
        const auto room = level_room(outline, {place.x, place.y + off});
        if (!room) return 0;
        least = std::min({least, place.x - std::max(room->from, sight.from),
                          std::min(room->to, sight.to) - place.x});
    }
    return least;
}

Outline with_x_and_y_swapped(Outline outline) {
    for (Point& corner : outline) std::swap(corner.x, corner.y);
    return outline;
}

struct Found {
    Point place;
    std::int64_t room = 0;
};

Found most_room(const Outline& outline, const Interval& wide, const Interval& high,
                std::int64_t height) {
    Found best;
    for (std::int64_t i = 1; i < tries; ++i) {
        for (std::int64_t j = 1; j < tries; ++j) {
            const Point place{wide.from + wide.length() * i / tries,
                              high.from + high.length() * j / tries};
            const std::int64_t room = room_about(outline, place, height, wide);
            if (room > best.room) best = {place, room};
        }
    }
    return best;
}

} // namespace

MapSheet::MapSheet(const SiteMap& map) : MapSheet(std::span(map.lots)) {}

MapSheet::MapSheet(const LotOutline& lot) : MapSheet(std::span(&lot, 1)) { bottom_ -= street; }

MapSheet::MapSheet(std::span<const LotOutline> lots) {
    bool first = true;
    for (const LotOutline& lot : lots) {
        for (const Point& corner : lot.outline) {
            left_ = first ? corner.x : std::min(left_, corner.x);
            right_ = first ? corner.x : std::max(right_, corner.x);
            bottom_ = first ? corner.y : std::min(bottom_, corner.y);
            top_ = first ? corner.y : std::max(top_, corner.y);
            first = false;
        }
    }
    left_ -= margin, right_ += margin, bottom_ -= foot, top_ += margin;
}

Outline MapSheet::laid(const Outline& places) const {
    Outline there;
    for (const Point& place : places) there.push_back(laid(place));
    return there;
}

std::optional<NamePlace> MapSheet::along(const Outline& line, std::int64_t length) const {
    std::optional<NamePlace> best;
    Int128 longest = Int128{length} * length;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        std::optional<Point> first;
        Point last;
        for (std::int64_t part = 0; part <= tries; ++part) {
            const Point place = between(line[i], line[i + 1], part, tries);
            if (place.x < 0 || place.y < 0 || place.x > width() || place.y > height()) continue;
            if (!first) first = place;
            last = place;
        }
        if (!first) continue;
        const Point way{last.x - first->x, last.y - first->y};
        const Int128 square = Int128{way.x} * way.x + Int128{way.y} * way.y;
        if (square <= longest) continue;
        longest = square;
        const bool backwards = way.x < 0 || (way.x == 0 && way.y > 0); // it is read upwards
        best = NamePlace{{first->x + way.x / 2, first->y + way.y / 2},
                         backwards ? Point{-way.x, -way.y} : way};
    }
    return best;
}

std::optional<NamePlace> MapSheet::within(const Outline& outline, std::int64_t length,
                                          std::int64_t height) const {
    const Interval wide{0, width()};
    const Interval high{0, this->height()};
    const Found level = most_room(outline, wide, high, height);
    if (level.room * 2 > length) return NamePlace{level.place, {1, 0}};
    const Found upright = most_room(with_x_and_y_swapped(outline), high, wide, height);
    if (upright.room * 2 <= length) return std::nullopt;
    return NamePlace{{upright.place.y, upright.place.x}, {0, -1}};
}

} // namespace quoin
