// Drawing stairs.
#include <algorithm>
#include <cstdlib>

#include "plan_symbols.hpp"
#include "words/rooms.hpp"

namespace quoin {
namespace {

constexpr std::int64_t tread = 90;
constexpr std::int64_t letter_size = 85;

/// A flight seen along its walking line: how far along, and how far across.
struct Flight {
    const Stairs& stairs;
    bool along_x;
    bool rising; ///< towards greater figures

    [[nodiscard]] std::int64_t along(Point place) const { return along_x ? place.x : place.y; }
    [[nodiscard]] std::int64_t across(Point place) const { return along_x ? place.y : place.x; }
    [[nodiscard]] Point at(std::int64_t along, std::int64_t across) const {
        return along_x ? Point{along, across} : Point{across, along};
    }
    [[nodiscard]] std::int64_t onward(std::int64_t far) const {
        return along(stairs.from) + (rising ? far : -far);
    }
    // The letters stand on the first treads, which make room for them.
    [[nodiscard]] std::int64_t lettered_depth() const { return along_x ? 190 : 120; }
    [[nodiscard]] std::int64_t lettered_half() const { return along_x ? 65 : 100; }
};

Flight flight_of(const Stairs& stairs) {
    const Point way{stairs.toward.x - stairs.from.x, stairs.toward.y - stairs.from.y};
    const bool along_x = std::abs(way.x) > std::abs(way.y);
    return {stairs, along_x, along_x ? way.x > 0 : way.y > 0};
}

/// Where a line across the flight meets its outline, from one side to the other.
std::vector<std::int64_t> crossings(const Flight& flight, std::int64_t at) {
    std::vector<std::int64_t> places;
    for (const OutlineSide& side : sides_of(flight.stairs.outline)) {
        const std::int64_t from = flight.along(side.from);
        const std::int64_t to = flight.along(side.to);
        if ((from <= at) == (to <= at)) continue;
        const std::int64_t low = flight.across(side.from);
        places.push_back(low + (flight.across(side.to) - low) * (at - from) / (to - from));
    }
    std::sort(places.begin(), places.end());
    return places;
}

void draw_tread(const Flight& flight, std::int64_t at, PathText& line) {
    const std::int64_t middle = flight.across(flight.stairs.from);
    const std::int64_t left = middle - flight.lettered_half();
    const std::int64_t right = middle + flight.lettered_half();
    const std::vector<std::int64_t> ends = crossings(flight, at);
    for (std::size_t i = 0; i + 1 < ends.size(); i += 2) {
        const bool lettered =
            std::abs(at - flight.along(flight.stairs.from)) < flight.lettered_depth() &&
            ends[i] < left && ends[i + 1] > right;
        if (!lettered) {
            line.segment(flight.at(at, ends[i]), flight.at(at, ends[i + 1]));
            continue;
        }
        line.segment(flight.at(at, ends[i]), flight.at(at, left));
        line.segment(flight.at(at, right), flight.at(at, ends[i + 1]));
    }
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
    const Flight flight = flight_of(stairs);
    PathText& line = pens.with(Pen::fine, chosen);
    line.outline(stairs.outline);
    const Extent box = extent_of(stairs.outline);
    const std::int64_t low = flight.along(box.low);
    const std::int64_t high = flight.along(box.high);
    for (std::int64_t far = tread; far < high - low; far += tread) {
        draw_tread(flight, flight.rising ? low + far : high - far, line);
    }
    const std::int64_t middle = flight.across(stairs.from);
    draw_arrow(flight.at(flight.onward(flight.lettered_depth()), middle), stairs.toward,
               pens.with(Pen::medium, chosen));
    letters.push_back({up ? say.rooms.up() : say.rooms.down(),
                       flight.at(flight.onward(flight.lettered_depth() / 2), middle), letter_size,
                       chosen});
}

} // namespace quoin
