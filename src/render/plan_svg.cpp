// Drawing a floor: rooms, walls, openings, what stands in it, its size.
#include "plan_svg.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "html.hpp"
#include "plan_labels.hpp"
#include "plan_openings.hpp"
#include "plan_symbols.hpp"
#include "words/rooms.hpp"
#include <quoin/exact/broken.hpp>
#include <quoin/words/feet.hpp>

namespace quoin {
namespace {

// Around the drawing, in hundredths of a foot.
constexpr std::int64_t left_margin = 330; ///< with the depth of the home
constexpr std::int64_t right_margin = 60;
constexpr std::int64_t upper_margin = 60;
constexpr std::int64_t lower_margin = 400; ///< with its width and the scale
constexpr std::int64_t dimension_font = 125;
constexpr std::int64_t dimension_font_on_paper = 150;

std::int64_t middle(std::int64_t a, std::int64_t b) { return (a + b) / 2; }

void take_in(Extent& extent, const Extent& other) {
    extent.low = {std::min(extent.low.x, other.low.x), std::min(extent.low.y, other.low.y)};
    extent.high = {std::max(extent.high.x, other.high.x), std::max(extent.high.y, other.high.y)};
}

Extent ground_of(const FloorOfPlan& floor) {
    Extent extent = extent_of(floor.rooms.front().room.outline);
    for (const FloorRoom& room : floor.rooms) take_in(extent, extent_of(room.room.outline));
    for (const auto& symbol : floor.symbols) take_in(extent, extent_of(symbol.part.outline));
    return extent;
}

/// Of what has walls; of all where nothing has.
Extent walled_extent(const FloorOfPlan& floor) {
    std::optional<Extent> extent;
    for (const FloorRoom& room : floor.rooms) {
        if (room.room.open) continue;
        if (!extent) extent = extent_of(room.room.outline);
        take_in(*extent, extent_of(room.room.outline));
    }
    return extent ? *extent : ground_of(floor);
}

/// As wide as the widest floor of the home.
Frame frame_of(const RoomsAnswer& answer, const FloorOfPlan& floor) {
    Extent extent = ground_of(floor);
    for (const FloorOfPlan& other : answer.floors) {
        if (other.rooms.empty()) continue;
        const Extent ground = ground_of(other);
        extent.low.x = std::min(extent.low.x, ground.low.x);
        extent.high.x = std::max(extent.high.x, ground.high.x);
    }
    return {{{extent.low.x - left_margin, extent.low.y - lower_margin},
             {extent.high.x + right_margin, extent.high.y + upper_margin}}};
}

bool holds(const Extent& outer, const Extent& inner) {
    return outer.low.x <= inner.low.x && outer.low.y <= inner.low.y &&
           inner.high.x <= outer.high.x && inner.high.y <= outer.high.y;
}

/// A sink in a vanity, or the vanity around it.
bool is_paired(const Symbol& symbol, const FloorOfPlan& floor) {
    const Extent box = extent_of(symbol.outline);
    return std::any_of(floor.symbols.begin(), floor.symbols.end(), [&](const auto& other) {
        const Extent beside = extent_of(other.part.outline);
        return symbol.kind == SymbolKind::sink
                   ? other.part.kind == SymbolKind::vanity && holds(beside, box)
               : symbol.kind == SymbolKind::vanity
                   ? other.part.kind == SymbolKind::sink && holds(box, beside)
                   : false;
    });
}

/// Text between tags, where quotes may stand as they are: sizes are full of them.
std::string written(std::string_view text) {
    std::string out;
    for (const char c : text) {
        out += c == '&' ? "&amp;" : c == '<' ? "&lt;" : c == '>' ? "&gt;" : std::string(1, c);
    }
    return out;
}

/// A floor on its way to the sheet.
class Sheet {
  public:
    Sheet(const RoomsAnswer& answer, const FloorOfPlan& floor, const Catalogue& say,
          SvgStands stands)
        : answer_(answer), floor_(floor), say_(say), stands_(stands),
          frame_(frame_of(answer, floor)), walls_(walled(floor)), pens_(frame_), wall_(frame_) {}

    [[nodiscard]] std::string svg();

  private:
    static std::vector<WalledRoom> walled(const FloorOfPlan& floor) {
        std::vector<WalledRoom> rooms;
        for (const FloorRoom& room : floor.rooms) {
            rooms.push_back({room.room.outline, room.room.open});
        }
        return rooms;
    }

    void draw_walls();
    void draw_things();
    void leave_free(const Symbol& symbol);
    void draw_dimensions();
    void draw_scale();
    void write(std::string text, Point middle, std::int64_t font);
    [[nodiscard]] std::string room_text(std::size_t place) const;
    [[nodiscard]] std::string label_text(std::size_t place) const;
    [[nodiscard]] std::string letters_text() const;

    const RoomsAnswer& answer_;
    const FloorOfPlan& floor_;
    const Catalogue& say_;
    SvgStands stands_;
    Frame frame_;
    Walls walls_;
    Pens pens_;
    PathText wall_;
    std::vector<Letters> letters_;
    std::string dimensions_;
    std::vector<Extent>
        gives_way_;              ///< swings of doors and cars, where a label finds no other place
    std::vector<Extent> things_; ///< that a label leaves free
};

void Sheet::draw_walls() {
    for (const Outline& line : walls_.around()) wall_.outline(line);
    for (std::size_t i = 0; i < floor_.rooms.size(); ++i) {
        const FloorRoom& room = floor_.rooms[i];
        if (room.room.open) {
            pens_.with(Pen::medium, !room.by.empty()).outline(walls_.clear(i));
        } else {
            wall_.outline(walls_.clear(i));
        }
    }
}

void Sheet::draw_things() {
    for (const OnFloor<Symbol>& symbol : floor_.symbols) {
        std::vector<Outline> rooms;
        for (std::size_t i = 0; i < floor_.rooms.size(); ++i) rooms.push_back(walls_.clear(i));
        draw_symbol(symbol.part, !symbol.by.empty(), is_paired(symbol.part, floor_), rooms, pens_,
                    letters_, say_);
        leave_free(symbol.part);
    }
    draw_stairs(answer_, floor_, pens_, letters_, say_);
    for (const OnFloor<Stairs>& stairs : floor_.stairs) {
        things_.push_back(extent_of(stairs.part.outline));
    }
}

/// What a label must not cross: of a ceiling its lines, of a car not even those where there is no
/// other place.
void Sheet::leave_free(const Symbol& symbol) {
    const Extent box = extent_of(symbol.outline);
    if (symbol.kind == SymbolKind::car) return gives_way_.push_back(box);
    if (symbol.kind != SymbolKind::vault && symbol.kind != SymbolKind::tray) {
        return things_.push_back(box);
    }
    things_.push_back({box.low, {box.high.x, box.low.y + 1}});
    things_.push_back({{box.low.x, box.high.y - 1}, box.high});
    things_.push_back({box.low, {box.low.x + 1, box.high.y}});
    things_.push_back({{box.high.x - 1, box.low.y}, box.high});
}

void Sheet::write(std::string text, Point middle, std::int64_t font) {
    letters_.push_back({std::move(text), middle, font, false});
}

/// How wide and how deep the home is, outside.
void Sheet::draw_dimensions() {
    const Extent home = walled_extent(floor_);
    const Extent ground = ground_of(floor_);
    PathText& line = pens_.with(Pen::fine, false);
    constexpr std::int64_t tick = 25;
    const auto ticked = [&](Point place) {
        line.segment({place.x - tick, place.y - tick}, {place.x + tick, place.y + tick});
    };
    const std::int64_t y = ground.low.y - 150;
    const std::int64_t font =
        stands_ == SvgStands::alone ? dimension_font : dimension_font_on_paper;
    line.segment({home.low.x, y}, {home.high.x, y});
    for (const std::int64_t x : {home.low.x, home.high.x}) {
        line.segment({x, y - 45}, {x, ground.low.y - 30});
        ticked({x, y});
    }
    write(feet_and_inches(in_feet(width_of(home))), {middle(home.low.x, home.high.x), y - font},
          font);
    const std::int64_t x = ground.low.x - 110;
    line.segment({x, home.low.y}, {x, home.high.y});
    for (const std::int64_t at : {home.low.y, home.high.y}) {
        line.segment({x - 45, at}, {ground.low.x - 30, at});
        ticked({x, at});
    }
    const Point beside{x - font * 3 / 4, middle(home.low.y, home.high.y)};
    dimensions_ = fmt::format(R"(<text x="{0}" y="{1}" font-size="{2}" )"
                              R"t(transform="rotate(-90 {0} {1})">{3}</text>)t"
                              "\n",
                              frame_.x(beside), frame_.y(beside), font,
                              written(feet_and_inches(in_feet(depth_of(home)))));
}

/// Ten feet, the first five of them filled.
void Sheet::draw_scale() {
    const Extent home = walled_extent(floor_);
    const std::int64_t y = frame_.extent.low.y + 120;
    const std::int64_t x = home.high.x - 1000;
    pens_.with(Pen::fine, false).box({{x, y}, {x + 1000, y + 24}});
    pens_.with(Pen::heavy, false).segment({x, y + 12}, {x + 500, y + 12});
    write(say_.rooms.scale(), {x - text_width(say_.rooms.scale()) * 6 / 10 - 60, y + 12}, 105);
}

/// The lines of a label, its middle at half the height of its letters.
std::string Sheet::label_text(std::size_t place) const {
    const FloorRoom& room = floor_.rooms[place];
    const std::string size = stands_ == SvgStands::alone ? size_text(room, say_) : std::string();
    const auto label = label_in(walls_.clear(place), room.room.name, size, gives_way_, things_);
    if (!label) return {};
    const std::int64_t x = frame_.x(label->middle);
    const std::int64_t y = frame_.y(label->middle);
    std::int64_t depth = 0;
    for (std::size_t i = 0; i < label->lines.size(); ++i) depth += label->height(i);
    std::string out;
    std::int64_t top = y - depth / 2;
    for (std::size_t i = 0; i < label->lines.size(); ++i) {
        const std::int64_t base = top + label->height(i) * 76 / 100;
        top += label->height(i);
        const std::string turned =
            label->upright ? fmt::format(" transform=\"rotate(-90 {} {})\"", x, y) : "";
        out += fmt::format(R"(<text class="{}" x="{}" y="{}" font-size="{}"{}>{}</text>)",
                           label->is_size(i) ? "size" : "name", x, base, label->font_of(i), turned,
                           written(label->lines[i]));
    }
    return out;
}

std::string Sheet::room_text(std::size_t place) const {
    const FloorRoom& room = floor_.rooms[place];
    PathText ground(frame_);
    ground.outline(walls_.clear(place));
    const bool chosen = !room.by.empty();
    std::string out = fmt::format(R"(<g class="room{}" data-room="{}")", chosen ? " chosen" : "",
                                  escaped(room.room.id));
    if (!room.area.empty()) out += fmt::format(R"( data-area="{}")", escaped(room.area));
    out += "><title>" + written(say_.rooms.room_and_size(room.room.name, size_text(room, say_))) +
           "</title>";
    out += chosen ? R"(<path class="ground" fill="currentColor" fill-opacity=".1")"
                  : R"(<path class="ground" fill="none" pointer-events="all")";
    return out + " d=\"" + ground.text() + "\"/>" + label_text(place) + "</g>\n";
}

std::string Sheet::letters_text() const {
    std::string out;
    for (const Letters& one : letters_) {
        out += fmt::format(R"(<text{} x="{}" y="{}" font-size="{}">{}</text>)"
                           "\n",
                           one.chosen ? R"( class="chosen")" : "", frame_.x(one.middle),
                           frame_.y(one.middle) + one.size * 36 / 100, one.size, written(one.text));
    }
    return out + dimensions_;
}

std::string Sheet::svg() {
    draw_walls();
    draw_openings(floor_.openings, walls_, wall_, pens_, gives_way_);
    draw_things();
    draw_dimensions();
    draw_scale();
    std::string rooms;
    for (std::size_t i = 0; i < floor_.rooms.size(); ++i) rooms += room_text(i);
    const std::string title = escaped(say_.rooms.drawing(answer_.heading.plan, floor_.name));
    constexpr std::string_view texts = R"(fill="currentColor" stroke="none" text-anchor="middle")";
    return fmt::format(R"(<svg{} class="floor" )"
                       R"(data-floor="{}" viewBox="0 0 {} {}" role="img" aria-label="{}" )"
                       R"(fill="none" stroke="currentColor"><title>{}</title>)"
                       "\n<g class=\"rooms\" {}>\n{}</g>\n"
                       R"(<g class="lines" pointer-events="none">)"
                       "\n"
                       R"(<path class="wall" fill="currentColor" fill-rule="evenodd" )"
                       R"(stroke="none" d="{}"/>)"
                       "\n{}<g class=\"letters\" {}>\n{}</g>\n</g>\n</svg>\n",
                       stands_ == SvgStands::alone ? R"( xmlns="http://www.w3.org/2000/svg")" : "",
                       escaped(floor_.id), width_of(frame_.extent), depth_of(frame_.extent), title,
                       title, texts, rooms, wall_.text(), pens_.svg(), texts, letters_text());
}

} // namespace

std::string size_text(const FloorRoom& room, const Catalogue& say) {
    const std::string size =
        say.rooms.size_of_room(feet_and_inches(room.width), feet_and_inches(room.depth));
    return room.rectangular ? size : say.rooms.up_to(size);
}

std::string plan_svg(const RoomsAnswer& answer, std::size_t floor, const Catalogue& say,
                     SvgStands stands) {
    ensure(floor < answer.floors.size() && !answer.floors[floor].rooms.empty(),
           "a floor that is drawn has rooms");
    return Sheet(answer, answer.floors[floor], say, stands).svg();
}

} // namespace quoin
