// Drawing stairs.
#include <algorithm>
#include <cstdlib>

#include "plan_symbols.hpp"
#include "words/rooms.hpp"

namespace quoin {
namespace {

constexpr std::int64_t tread = 90;
constexpr std::int64_t letter_size = 85;

/// Where a line across the flight meets its outline, from one side to the other.
std::vector<std::int64_t> crossings(const Outline& outline, bool upright, std::int64_t at) {
    std::vector<std::int64_t> places;
    for (const OutlineSide& side : sides_of(outline)) {
        const std::int64_t from = upright ? side.from.x : side.from.y;
        const std::int64_t to = upright ? side.to.x : side.to.y;
        if ((from <= at) == (to <= at)) continue;
        const std::int64_t low = upright ? side.from.y : side.from.x;
        const std::int64_t high = upright ? side.to.y : side.to.x;
        places.push_back(low + (high - low) * (at - from) / (to - from));
    }
    std::sort(places.begin(), places.end());
    return places;
}

void draw_arrow(Point from, Point to, PathText& line) {
    line.segment(from, to);
    constexpr std::int64_t back = 32;
    constexpr std::int64_t side = 16;
    const Point way{to.x - from.x, to.y - from.y};
    if (way == Point{}) return;
    // Back along the way: to the left of the way turned by a quarter.
    const Point neck = aside(to, {-way.y, way.x}, back);
    line.move(aside(neck, way, side));
    line.line(to);
    line.line(aside(neck, way, -side));
}

} // namespace

void draw_stairs(const Stairs& stairs, bool up, bool chosen, Pens& pens,
                 std::vector<Letters>& letters, const Catalogue& say) {
    const Point way{stairs.toward.x - stairs.from.x, stairs.toward.y - stairs.from.y};
    const bool along_x = std::abs(way.x) > std::abs(way.y);
    const bool rising = along_x ? way.x > 0 : way.y > 0;
    const Extent box = extent_of(stairs.outline);
    const std::int64_t low = along_x ? box.low.x : box.low.y;
    const std::int64_t high = along_x ? box.high.x : box.high.y;
    const std::int64_t middle = along_x ? stairs.from.y : stairs.from.x;
    const std::int64_t start = along_x ? stairs.from.x : stairs.from.y;
    // The letters stand on the first treads, which make room for them.
    const std::int64_t lettered_depth = along_x ? 190 : 120;
    const std::int64_t half_width = along_x ? 65 : 100;
    const auto place = [&](std::int64_t along, std::int64_t across) {
        return along_x ? Point{along, across} : Point{across, along};
    };
    pens.with(Pen::fine, chosen).outline(stairs.outline);
    PathText& line = pens.with(Pen::fine, chosen);
    for (std::int64_t i = 1; tread * i < high - low; ++i) {
        const std::int64_t at = rising ? low + tread * i : high - tread * i;
        const std::vector<std::int64_t> ends = crossings(stairs.outline, along_x, at);
        for (std::size_t end = 0; end + 1 < ends.size(); end += 2) {
            const bool lettered = std::abs(at - start) < lettered_depth &&
                                  ends[end] < middle - half_width &&
                                  ends[end + 1] > middle + half_width;
            if (!lettered) {
                line.segment(place(at, ends[end]), place(at, ends[end + 1]));
                continue;
            }
            line.segment(place(at, ends[end]), place(at, middle - half_width));
            line.segment(place(at, middle + half_width), place(at, ends[end + 1]));
        }
    }
    const std::int64_t forward = rising ? 1 : -1;
    draw_arrow(place(start + forward * lettered_depth, middle), stairs.toward,
               pens.with(Pen::medium, chosen));
    letters.push_back({up ? say.rooms.up() : say.rooms.down(),
                       place(start + forward * lettered_depth / 2, middle), letter_size, chosen});
}

} // namespace quoin
