// Drawing stairs.
#include <algorithm>
#include <cstdlib>

#include "plan_labels.hpp"
#include "plan_symbols.hpp"
#include "words/rooms.hpp"

namespace quoin {
namespace {

constexpr std::int64_t tread = 90;
constexpr std::int64_t letter_size = 85;

/// A flight seen along its walking line: how far along, and how far across.
struct Flight {
    const Stairs& stairs;
    Extent box;
    bool along_x;
    bool rising; ///< towards greater figures

    [[nodiscard]] std::int64_t along(Point place) const { return along_x ? place.x : place.y; }
    [[nodiscard]] std::int64_t across(Point place) const { return along_x ? place.y : place.x; }
    [[nodiscard]] Point at(std::int64_t along, std::int64_t across) const {
        return along_x ? Point{along, across} : Point{across, along};
    }
    [[nodiscard]] std::int64_t middle() const { return across(stairs.from); }
    [[nodiscard]] std::int64_t onward(std::int64_t far) const {
        return along(stairs.from) + (rising ? far : -far);
    }
};

Flight flight_of(const Stairs& stairs) {
    const Point way{stairs.toward.x - stairs.from.x, stairs.toward.y - stairs.from.y};
    const bool along_x = std::abs(way.x) > std::abs(way.y);
    return {stairs, extent_of(stairs.outline), along_x, along_x ? way.x > 0 : way.y > 0};
}

/// The letters stand on the first treads, which make room for them.
struct Lettered {
    Letters letters;
    Extent box;
};

Lettered lettered(const Flight& flight, std::string text, bool chosen) {
    const std::int64_t beside = std::min(flight.middle() - flight.across(flight.box.low),
                                         flight.across(flight.box.high) - flight.middle());
    const std::int64_t width = text_width(text);
    std::int64_t size = letter_size;
    if (!flight.along_x && beside > 0) size = std::min(size, 2 * beside * 100 / width);
    constexpr std::int64_t margin = 12;
    const std::int64_t half_width = width * size / 200 + margin;
    const std::int64_t half_height = size / 2 + margin;
    const Point middle = flight.at(
        flight.onward(tread / 3 + (flight.along_x ? half_width : half_height)), flight.middle());
    return {{std::move(text), middle, size, chosen},
            {{middle.x - half_width, middle.y - half_height},
             {middle.x + half_width, middle.y + half_height}}};
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

/// The edge of a step, but for where letters stand.
void draw_tread(const Flight& flight, std::int64_t at, const std::vector<Lettered>& all,
                PathText& line) {
    std::vector<std::int64_t> ends = crossings(flight, at);
    if (ends.empty()) return;
    for (const Lettered& one : all) {
        if (at <= flight.along(one.box.low) || at >= flight.along(one.box.high)) continue;
        ends.push_back(std::clamp(flight.across(one.box.low), ends.front(), ends.back()));
        ends.push_back(std::clamp(flight.across(one.box.high), ends.front(), ends.back()));
        std::sort(ends.begin(), ends.end());
    }
    for (std::size_t i = 0; i + 1 < ends.size(); i += 2) {
        if (ends[i] == ends[i + 1]) continue;
        line.segment(flight.at(at, ends[i]), flight.at(at, ends[i + 1]));
    }
}

void draw_flight(const Flight& flight, const std::vector<Lettered>& all, PathText& line) {
    line.outline(flight.stairs.outline);
    const std::int64_t high = flight.along(flight.box.high);
    for (std::int64_t at = flight.along(flight.box.low) + tread; at < high; at += tread) {
        draw_tread(flight, at, all, line);
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

/// From behind the letters to where the walking line ends.
void draw_way(const Flight& flight, const Extent& letters, PathText& line) {
    const std::int64_t begin = flight.along(flight.rising ? letters.high : letters.low);
    draw_arrow(flight.at(begin, flight.middle()), flight.stairs.toward, line);
}

bool leads_up(const RoomsAnswer& answer, const FloorOfPlan& from, const Stairs& stairs) {
    const auto floor = [&](const std::string& id) {
        return std::find_if(answer.floors.begin(), answer.floors.end(),
                            [&](const FloorOfPlan& one) { return one.id == id; });
    };
    return floor(stairs.to) > floor(from.id);
}

} // namespace

void draw_stairs(const RoomsAnswer& answer, const FloorOfPlan& floor, Pens& pens,
                 std::vector<Letters>& letters, const Catalogue& say) {
    std::vector<Lettered> all;
    for (const OnFloor<Stairs>& stairs : floor.stairs) {
        const bool up = leads_up(answer, floor, stairs.part);
        all.push_back(lettered(flight_of(stairs.part), up ? say.rooms.up() : say.rooms.down(),
                               !stairs.by.empty()));
        letters.push_back(all.back().letters);
    }
    std::vector<Outline> drawn;
    for (std::size_t i = 0; i < floor.stairs.size(); ++i) {
        const OnFloor<Stairs>& stairs = floor.stairs[i];
        const Flight flight = flight_of(stairs.part);
        const bool chosen = !stairs.by.empty();
        draw_way(flight, all[i].box, pens.with(Pen::medium, chosen));
        const Outline outline = plainest(stairs.part.outline);
        if (std::find(drawn.begin(), drawn.end(), outline) != drawn.end()) continue;
        draw_flight(flight, all, pens.with(Pen::fine, chosen));
        drawn.push_back(outline);
    }
}

} // namespace quoin
