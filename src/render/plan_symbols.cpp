// Drawing counters, fixtures and appliances.
#include "plan_symbols.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <utility>

#include "words/rooms.hpp"

namespace quoin {
namespace {

enum class Back { low_y, high_x, high_y, low_x };

/// A symbol's rectangle as seen by who stands before it: from left to right, and from its back to
/// its front, both in thousandths.
class Placed {
  public:
    Placed(const Extent& box, Back back) : box_(box), back_(back) {}

    [[nodiscard]] bool lies_across() const { return back_ == Back::low_y || back_ == Back::high_y; }
    [[nodiscard]] std::int64_t width() const {
        return lies_across() ? width_of(box_) : depth_of(box_);
    }
    [[nodiscard]] std::int64_t depth() const {
        return lies_across() ? depth_of(box_) : width_of(box_);
    }
    [[nodiscard]] Point at(std::int64_t across, std::int64_t forward) const {
        const auto part = [](std::int64_t from, std::int64_t to, std::int64_t thousandths) {
            return from + (to - from) * thousandths / 1000;
        };
        switch (back_) {
        case Back::low_y:
            return {part(box_.low.x, box_.high.x, across), part(box_.low.y, box_.high.y, forward)};
        case Back::high_y:
            return {part(box_.low.x, box_.high.x, across), part(box_.high.y, box_.low.y, forward)};
        case Back::low_x:
            return {part(box_.low.x, box_.high.x, forward), part(box_.low.y, box_.high.y, across)};
        case Back::high_x:
            break;
        }
        return {part(box_.high.x, box_.low.x, forward), part(box_.low.y, box_.high.y, across)};
    }
    /// A rectangle in it.
    [[nodiscard]] Extent part(std::int64_t left, std::int64_t right, std::int64_t back,
                              std::int64_t front) const {
        return extent_of({at(left, back), at(right, front)});
    }

  private:
    Extent box_;
    Back back_;
};

Point middle_of(const Extent& box) {
    return {(box.low.x + box.high.x) / 2, (box.low.y + box.high.y) / 2};
}

/// How far a side of a rectangle is from the sides of the room beyond it.
std::int64_t gap_to_wall(const Extent& box, Back back, const Outline& room) {
    constexpr std::int64_t far = 100'000;
    const Point middle = middle_of(box);
    std::int64_t gap = far;
    for (const OutlineSide& side : sides_of(room)) {
        const bool across = back == Back::low_y || back == Back::high_y;
        const Extent line = extent_of({side.from, side.to});
        if (across ? side.from.y != side.to.y || middle.x < line.low.x || middle.x > line.high.x
                   : side.from.x != side.to.x || middle.y < line.low.y || middle.y > line.high.y) {
            continue;
        }
        const std::int64_t distance = back == Back::low_y    ? box.low.y - line.low.y
                                      : back == Back::high_y ? line.low.y - box.high.y
                                      : back == Back::low_x  ? box.low.x - line.low.x
                                                             : line.low.x - box.high.x;
        const bool beyond = distance > -std::min(width_of(box), depth_of(box)) / 2;
        if (beyond) gap = std::min(gap, std::abs(distance));
    }
    return gap;
}

/// The side that stands nearest to a wall; a toilet's tank is on a short one.
Back back_of(const Symbol& symbol, const std::vector<Outline>& rooms) {
    const Extent box = extent_of(symbol.outline);
    const bool wide = width_of(box) >= depth_of(box);
    const bool on_short_side = symbol.kind == SymbolKind::toilet;
    // Where it stands in a corner, the longer side is the back.
    std::array<Back, 4> sides = {Back::low_y, Back::high_y, Back::low_x, Back::high_x};
    if (wide == on_short_side) std::rotate(sides.begin(), sides.begin() + 2, sides.end());
    const auto room = std::find_if(rooms.begin(), rooms.end(), [&](const Outline& one) {
        return lies(middle_of(box), one) != Lies::outside;
    });
    if (room == rooms.end()) return sides.front();
    const auto count = on_short_side ? 2 : 4;
    return *std::min_element(sides.begin(), sides.begin() + count, [&](Back a, Back b) {
        constexpr std::int64_t as_near = 40;
        return gap_to_wall(box, a, *room) / as_near < gap_to_wall(box, b, *room) / as_near;
    });
}

struct Drawing {
    const Symbol& symbol;
    Placed placed;
    bool chosen;
    bool paired;
    Pens& pens;
    std::vector<Letters>& letters;

    [[nodiscard]] PathText& fine() const { return pens.with(Pen::fine, chosen); }
    [[nodiscard]] PathText& medium() const { return pens.with(Pen::medium, chosen); }
    [[nodiscard]] PathText& dashed() const { return pens.with(Pen::dashed, chosen); }
    void outlined() const { medium().outline(symbol.outline); }
    void circle(std::int64_t across, std::int64_t forward, std::int64_t radius) const {
        fine().ellipse(placed.at(across, forward), radius, radius);
    }
    /// An ellipse so wide and so deep, in hundredths of a foot.
    void bowl(std::int64_t across, std::int64_t forward, std::int64_t wide,
              std::int64_t deep) const {
        const bool turned = !placed.lies_across();
        fine().ellipse(placed.at(across, forward), (turned ? deep : wide) / 2,
                       (turned ? wide : deep) / 2);
    }
    void across(std::int64_t forward) const {
        fine().segment(placed.at(0, forward), placed.at(1000, forward));
    }
    void lettered(std::string text) const {
        const Extent box = extent_of(symbol.outline);
        const std::int64_t room = std::min<std::int64_t>(width_of(box), 400);
        const auto count = static_cast<std::int64_t>(text.size());
        const std::int64_t size =
            std::min<std::int64_t>({room * 10 / (count * 8), depth_of(box) * 6 / 10, 95});
        letters.push_back({std::move(text), middle_of(box), size, chosen});
    }
};

void draw_sink(const Drawing& d) {
    if (d.paired) return d.bowl(500, 500, d.placed.width(), d.placed.depth());
    d.outlined();
    constexpr std::int64_t two_bowls = 220;
    if (d.placed.width() < two_bowls) {
        d.fine().rounded(d.placed.part(120, 880, 220, 880), 15);
        return;
    }
    d.fine().rounded(d.placed.part(80, 480, 220, 900), 15);
    d.fine().rounded(d.placed.part(520, 920, 220, 900), 15);
}

void draw_range(const Drawing& d) {
    d.outlined();
    d.across(130);
    const std::int64_t small = std::min(d.placed.width(), d.placed.depth()) * 13 / 100;
    d.circle(280, 370, small);
    d.circle(720, 370, small + 6);
    d.circle(280, 740, small + 6);
    d.circle(720, 740, small);
}

void draw_tub(const Drawing& d) {
    d.outlined();
    const bool long_back = d.placed.width() >= d.placed.depth();
    const Extent inner =
        long_back ? d.placed.part(50, 950, 110, 890) : d.placed.part(110, 890, 50, 950);
    d.fine().rounded(inner, std::min(width_of(inner), depth_of(inner)) * 4 / 10);
    long_back ? d.circle(160, 500, 9) : d.circle(500, 160, 9);
}

void draw_shower(const Drawing& d) {
    d.outlined();
    d.fine().segment(d.placed.at(0, 0), d.placed.at(1000, 1000));
    d.fine().segment(d.placed.at(1000, 0), d.placed.at(0, 1000));
    d.circle(500, 500, 14);
}

void draw_toilet(const Drawing& d) {
    d.fine().rounded(d.placed.part(0, 1000, 0, 300), 12);
    d.bowl(500, 650, d.placed.width() * 8 / 10, d.placed.depth() * 7 / 10);
}

void draw_vanity(const Drawing& d) {
    d.outlined();
    if (d.paired) return;
    const std::int64_t deep = d.placed.depth() * 55 / 100;
    const std::int64_t wide = std::min(deep * 13 / 10, d.placed.width() * 7 / 10);
    constexpr std::int64_t two_bowls = 480;
    if (d.placed.width() < two_bowls) return d.bowl(500, 520, wide, deep);
    d.bowl(260, 520, wide, deep);
    d.bowl(740, 520, wide, deep);
}

void draw_fireplace(const Drawing& d) {
    d.outlined();
    PathText& line = d.medium();
    line.move(d.placed.at(150, 1000));
    line.line(d.placed.at(270, 300));
    line.line(d.placed.at(730, 300));
    line.line(d.placed.at(850, 1000));
}

/// Lines from the back to the front, about so far from each other.
void divide(const Drawing& d, std::int64_t apart) {
    const std::int64_t cells = std::max(d.placed.width() / apart, std::int64_t{1});
    for (std::int64_t i = 1; i < cells; ++i) {
        d.fine().segment(d.placed.at(1000 * i / cells, 0), d.placed.at(1000 * i / cells, 1000));
    }
}

void draw_steps(const Drawing& d) {
    d.outlined();
    const std::int64_t treads = std::max(d.placed.depth() / 90, std::int64_t{1});
    for (std::int64_t i = 1; i < treads; ++i) d.across(1000 * i / treads);
}

/// Lines along the middle of the longer way, where two slopes of a ceiling meet; between them is
/// room for the name.
void draw_vault(const Drawing& d) {
    d.dashed().outline(d.symbol.outline);
    const bool across = d.placed.width() >= d.placed.depth();
    for (const auto& [from, to] : {std::pair{0, 330}, std::pair{670, 1000}}) {
        across ? d.dashed().segment(d.placed.at(from, 500), d.placed.at(to, 500))
               : d.dashed().segment(d.placed.at(500, from), d.placed.at(500, to));
    }
}

void draw_car(const Drawing& d) {
    const bool long_back = d.placed.width() >= d.placed.depth();
    const auto part = [&](std::int64_t a, std::int64_t b, std::int64_t from, std::int64_t to) {
        return long_back ? d.placed.part(from, to, a, b) : d.placed.part(a, b, from, to);
    };
    d.fine().rounded(part(0, 1000, 0, 1000), 110);
    d.fine().rounded(part(120, 880, 240, 800), 60);
    d.fine().rounded(part(170, 830, 370, 690), 40);
}

void draw_outdoors_or_stored(const Drawing& d) {
    switch (d.symbol.kind) {
    case SymbolKind::shelves:
        d.fine().outline(d.symbol.outline);
        return d.dashed().segment(d.placed.at(0, 550), d.placed.at(1000, 550));
    case SymbolKind::lockers:
        d.outlined();
        return divide(d, 150);
    case SymbolKind::bench:
        d.outlined();
        return d.across(250);
    case SymbolKind::steps:
        return draw_steps(d);
    case SymbolKind::vault:
        return draw_vault(d);
    case SymbolKind::tray:
        return d.dashed().outline(d.symbol.outline);
    case SymbolKind::car:
        return draw_car(d);
    default:
        return d.outlined();
    }
}

void draw(const Drawing& d, const RoomsWords& say) {
    switch (d.symbol.kind) {
    case SymbolKind::sink:
        return draw_sink(d);
    case SymbolKind::range:
        return draw_range(d);
    case SymbolKind::refrigerator:
        d.outlined();
        d.across(860);
        return d.lettered(say.refrigerator());
    case SymbolKind::ovens:
        d.outlined();
        d.fine().box(d.placed.part(120, 880, 120, 500));
        return d.fine().box(d.placed.part(120, 880, 560, 900));
    case SymbolKind::tub:
        return draw_tub(d);
    case SymbolKind::shower:
        return draw_shower(d);
    case SymbolKind::toilet:
        return draw_toilet(d);
    case SymbolKind::vanity:
        return draw_vanity(d);
    case SymbolKind::washer:
        d.outlined();
        return d.lettered(say.washer());
    case SymbolKind::dryer:
        d.outlined();
        return d.lettered(say.dryer());
    case SymbolKind::fireplace:
        return draw_fireplace(d);
    case SymbolKind::furnace:
        d.outlined();
        return d.lettered(say.furnace());
    case SymbolKind::water_heater: {
        const Extent box = extent_of(d.symbol.outline);
        const std::int64_t radius = std::min(width_of(box), depth_of(box)) / 2;
        d.medium().ellipse(middle_of(box), radius, radius);
        return d.lettered(say.water_heater());
    }
    default:
        return draw_outdoors_or_stored(d);
    }
}

} // namespace

void draw_symbol(const Symbol& symbol, bool chosen, bool paired, const std::vector<Outline>& rooms,
                 Pens& pens, std::vector<Letters>& letters, const Catalogue& say) {
    const Placed placed(extent_of(symbol.outline), back_of(symbol, rooms));
    draw({symbol, placed, chosen, paired, pens, letters}, say.rooms);
}

} // namespace quoin
