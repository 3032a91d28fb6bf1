// Rendering the floor plan: a table a floor, and its drawing.
#include <quoin/answers/rooms.hpp>

#include "plan_svg.hpp"
#include "pricebook/walls.hpp"
#include "shared_fields.hpp"
#include "words/rooms.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

std::string brought_text(const std::vector<BroughtBy>& by, const Catalogue& say) {
    std::vector<std::string> names;
    for (const BroughtBy& one : by) names.push_back(one.name);
    return names.empty() ? std::string{} : say.rooms.brought_by(joined(names));
}

std::string whole_feet(Decimal square_feet) {
    return grouped(Decimal::whole(square_feet.rounded(Rounding::half_away)));
}

Blocks floor_text(const FloorOfPlan& floor, const Catalogue& say) {
    const RoomsWords& of = say.rooms;
    const std::string title = floor.square_feet > Decimal{}
                                  ? of.floor(floor.name, whole_feet(floor.square_feet))
                                  : of.other_floor(floor.name);
    Table table({{of.room(), Align::left, 30, 24},
                 {of.size(), Align::left, 20, 18},
                 {of.square_feet(), Align::right, 8, 6},
                 {"", Align::left, 40}});
    for (const FloorRoom& room : floor.rooms) {
        table.row({room.room.name, size_text(room, say), whole_feet(room.square_feet),
                   brought_text(room.by, say)});
    }
    return titled(title) + table;
}

Cautions cautions_of(const RoomsAnswer& answer, const Catalogue& say) {
    if (answer.floors.empty()) return {};
    return {{CautionCode::sizes_as_drawn, say.rooms.sizes_as_drawn()}};
}

/// Outlines are told in feet: [["0", "0"], ["14", "0"], ["14", "12.5"]].
using Feet = std::vector<Decimal>;

Feet feet_of(Point place) { return {in_feet(place.x), in_feet(place.y)}; }

std::vector<Feet> feet_of(const Outline& outline) {
    std::vector<Feet> corners;
    for (const Point corner : outline) corners.push_back(feet_of(corner));
    return corners;
}

Point place_of(const Feet& feet) {
    const auto hundredths = [&](std::size_t i) {
        return i < feet.size() ? feet[i].billionths() / Decimal::hundredth : 0;
    };
    return {hundredths(0), hundredths(1)};
}

Outline outline_of(const std::vector<Feet>& corners) {
    Outline outline;
    for (const Feet& corner : corners) outline.push_back(place_of(corner));
    return outline;
}

void outline_field(auto& v, auto& outline) {
    v.held(
        "outline", [&] { return feet_of(outline); },
        [&](const auto& corners) { outline = outline_of(corners); });
}

void place_field(auto& v, std::string_view key, auto& place) {
    v.held(
        key, [&] { return feet_of(place); }, [&](const auto& feet) { place = place_of(feet); });
}

} // namespace

Blocks blocks_of(const RoomsAnswer& answer, const Catalogue& say) {
    Blocks out = heading_text(answer.heading, say.rooms.title(), say);
    if (answer.floors.empty()) out += Blocks("\n") + paragraph(say.rooms.no_drawing());
    for (const FloorOfPlan& floor : answer.floors) out += floor_text(floor, say);
    if (!answer.notes.empty()) out += "\n";
    for (const std::string& note : answer.notes) out += paragraph(note);
    return out + footing_text(cautions_of(answer, say));
}

void fields(auto& v, Of<BroughtBy> auto& by) {
    v.named("BroughtBy");
    v("option", by.option);
    v("name", by.name);
}

void fields(auto& v, Of<FloorRoom> auto& one) {
    v.named("FloorRoom");
    v("id", one.room.id);
    v("name", one.room.name);
    v("area", one.area);
    v("living", one.room.living);
    v("open", one.room.open);
    v("square_feet", one.square_feet);
    v("width", one.width);
    v("depth", one.depth);
    v("rectangular", one.rectangular);
    v.words("size", [&](const Catalogue& say) { return size_text(one, say); });
    outline_field(v, one.room.outline);
    v("by", one.by);
}

void fields(auto& v, Of<OnFloor<Opening>> auto& one) {
    v.named("FloorOpening");
    v("id", one.part.id);
    v("kind", one.part.kind);
    place_field(v, "from", one.part.from);
    place_field(v, "to", one.part.to);
    v.either("opens", one.part.left, "left", "right");
    v("by", one.by);
}

void fields(auto& v, Of<OnFloor<Stairs>> auto& one) {
    v.named("FloorStairs");
    v("id", one.part.id);
    v("to", one.part.to);
    outline_field(v, one.part.outline);
    place_field(v, "from", one.part.from);
    place_field(v, "toward", one.part.toward);
    v("by", one.by);
}

void fields(auto& v, Of<OnFloor<Symbol>> auto& one) {
    v.named("FloorSymbol");
    v("id", one.part.id);
    v("kind", one.part.kind);
    outline_field(v, one.part.outline);
    v("by", one.by);
}

void fields(auto& v, Of<RoomsAnswer> auto& answer) {
    v.named("Rooms");
    v.constant("question", "rooms");
    v("heading", answer.heading);
    v("plan", answer.plan);
    v.each(
        "floors", answer.floors,
        [&](auto& floor, std::size_t place) {
            v("id", floor.id);
            v("name", floor.name);
            v("square_feet", floor.square_feet);
            v("rooms", floor.rooms);
            v("openings", floor.openings);
            v("stairs", floor.stairs);
            v("symbols", floor.symbols);
            v.words("svg", [&](const Catalogue& say) { return plan_svg(answer, place, say); });
        },
        "FloorOfPlan");
    v("notes", answer.notes);
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const RoomsAnswer&, const Catalogue&);

template const Shape& shape_of<RoomsAnswer>();
template std::optional<RoomsAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
