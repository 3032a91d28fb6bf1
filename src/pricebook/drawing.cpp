// Reading a plan's drawing: its floors, part by part, then its changes.
#include <quoin/pricebook/drawing.hpp>

#include <algorithm>
#include <map>

#include "book_reader.hpp"
#include "drawing_marks.hpp"
#include "feet.hpp"
#include "geometry.hpp"

namespace quoin {
namespace {

constexpr FeetRange within{0, 1000};

enum class PartKind { room, opening, stairs, symbol };

/// The ids that parts of a floor have, as drawn or by a change: a change may name any of them.
using FloorIds = std::map<std::string, PartKind>;

/// Reads the parts of a floor or of a change. What a floor has of one kind keeps its id from all
/// other kinds, so that an id says what it takes out or takes the place of.
class PartsReader {
  public:
    PartsReader(const PriceBook& book, const Plan& plan, FloorIds& ids)
        : book_(&book), plan_(&plan), ids_(&ids) {}

    void read(Reader& item);

    Parts parts;
    PartMarks marks;
    std::map<std::string, Mark> measures;

  private:
    std::string id(Reader& item, PartKind kind);
    void read_room(Reader& item);
    void read_opening(Reader& item);
    void read_stairs(Reader& item);
    void read_symbol(Reader& item);

    const PriceBook* book_;
    const Plan* plan_;
    FloorIds* ids_;
    std::vector<std::string> own_; ///< ids so far
};

Point place(Reader& item, std::string_view key) {
    item.must_have(key);
    if (!item.has(key)) return {};
    return as_place(item.spot(key), within, item.findings()).value_or(Point{});
}

Outline read_outline(Reader& item) {
    Outline outline;
    item.must_have("outline");
    const auto add = [&](const Spot& spot) {
        const auto corner = as_place(spot, within, item.findings());
        if (corner) outline.push_back(*corner);
    };
    item.items("outline", add, caps::corners);
    if (item.sound() && !is_simple(outline)) {
        item.report(problems::outline_unsound(item.spot("outline")));
    }
    return outline;
}

std::string PartsReader::id(Reader& item, PartKind kind) {
    if (!item.has("id")) return {};
    std::string id = item.id("id");
    if (id.empty()) return id;
    const auto known = ids_->emplace(id, kind).first;
    const bool again = std::find(own_.begin(), own_.end(), id) != own_.end();
    if (again || known->second != kind) {
        item.report(problems::id_repeated(item.spot("id"), Noun::drawn_part));
    }
    own_.push_back(id);
    return id;
}

void PartsReader::read_room(Reader& item) {
    Room room;
    item.must_have("id");
    room.id = id(item, PartKind::room);
    room.name = item.name("name");
    if (item.has("area")) room.area = index_member(item, "area", book_->areas, Noun::area);
    room.living = item.flag_or("living", true);
    room.open = item.flag_or("open", false);
    item.items("measures", [&](const Spot& spot) {
        const auto name = as_text(spot, item.findings());
        if (!name) return;
        if (find_measure(plan_->measures, *name) == nullptr) {
            std::vector<std::string> known;
            for (const Measure& measure : plan_->measures) known.push_back(measure.name);
            item.report(
                problems::name_unknown(spot, Noun::plan_measure, *name, nearest(*name, known)));
        }
        measures.emplace(*name, Mark(spot));
        room.measures.push_back(*name);
    });
    room.outline = read_outline(item);
    marks.rooms.emplace_back(item.spot("outline"));
    parts.rooms.push_back(std::move(room));
}

void PartsReader::read_opening(Reader& item) {
    static const Words<bool> sides{{true, "left"}, {false, "right"}};
    Opening opening;
    opening.id = id(item, PartKind::opening);
    opening.kind = item.word<OpeningKind>("kind");
    opening.from = place(item, "from");
    opening.to = place(item, "to");
    opening.left = item.word_or("opens", sides, true);
    marks.openings.emplace_back(item.here());
    parts.openings.push_back(std::move(opening));
}

void PartsReader::read_stairs(Reader& item) {
    Stairs stairs;
    item.must_have("id");
    stairs.id = id(item, PartKind::stairs);
    stairs.to = item.text("to");
    stairs.from = place(item, "from");
    stairs.toward = place(item, "toward");
    stairs.outline = read_outline(item);
    marks.stairs.emplace_back(item.spot("outline"));
    marks.stairs_to.emplace_back(item.spot("to"));
    parts.stairs.push_back(std::move(stairs));
}

void PartsReader::read_symbol(Reader& item) {
    Symbol symbol;
    symbol.id = id(item, PartKind::symbol);
    symbol.kind = item.word<SymbolKind>("kind");
    symbol.outline = read_outline(item);
    parts.symbols.push_back(std::move(symbol));
}

void PartsReader::read(Reader& item) {
    const auto each = [&](std::string_view key, void (PartsReader::*read_one)(Reader&)) {
        const auto use = [&](Reader& one) { (this->*read_one)(one); };
        item.each(key, use, false, caps::drawn);
    };
    each("rooms", &PartsReader::read_room);
    each("openings", &PartsReader::read_opening);
    each("stairs", &PartsReader::read_stairs);
    each("symbols", &PartsReader::read_symbol);
}

/// Reads a drawing into itself; later parts are held to earlier ones.
class DrawingReader {
  public:
    DrawingReader(const PriceBook& book, Index<Plan> plan)
        : book_(&book), plan_(&at(book.plans, plan)) {}

    void read(Reader& root);

    PlanDrawing drawing;
    DrawingMarks marks;

  private:
    void read_floor(Reader& item);
    void read_change(Reader& item);
    std::vector<DrawnIf> conditions(Reader& change, std::string_view key);
    DrawnIf condition(Reader& item);
    void check_destinations(const Parts& parts, const PartMarks& part_marks, Findings& findings);

    const PriceBook* book_;
    const Plan* plan_;
    std::vector<FloorIds> ids_; ///< one for each floor
};

void DrawingReader::read_floor(Reader& item) {
    Floor floor;
    floor.id = item.id("id");
    floor.name = item.name("name");
    distinct_id(item, drawing.floors, floor.id, Noun::floor);
    PartsReader reader(*book_, *plan_, ids_.emplace_back());
    reader.read(item);
    floor.parts = std::move(reader.parts);
    drawing.floors.push_back(std::move(floor));
    marks.of_floors.push_back(std::move(reader.marks));
    marks.measures.merge(reader.measures);
}

/// One of an option, an elevation and a grade; what is beside it is told as unknown.
DrawnIf DrawingReader::condition(Reader& item) {
    DrawnIf condition;
    if (item.has("elevation")) {
        condition.elevation = index_member(item, "elevation", plan_->elevations, Noun::elevation);
        return condition;
    }
    if (item.has("grade")) {
        condition.grade = item.word<Grade>("grade");
        return condition;
    }
    const auto option = index_member(item, "option", book_->options, Noun::option);
    if (!option) {
        for (const std::string_view key : {"level", "choice"}) item.leave(key);
        return condition;
    }
    condition.option = OptionRef{*option};
    const Option& named = at(book_->options, *option);
    if (item.has("level")) {
        condition.option->level = index_member(item, "level", named.levels, Noun::level);
    } else if (item.has("choice")) {
        condition.choice = index_member(item, "choice", named.choices, Noun::choice);
    }
    return condition;
}

std::vector<DrawnIf> DrawingReader::conditions(Reader& change, std::string_view key) {
    std::vector<DrawnIf> list;
    change.each(
        key, [&](Reader& item) { list.push_back(condition(item)); }, false, caps::conditions);
    return list;
}

void DrawingReader::read_change(Reader& item) {
    DrawingChange change;
    item.must_have("when");
    change.when = conditions(item, "when");
    if (item.sound() && change.when.empty()) item.report(problems::list_empty(item.spot("when")));
    change.unless = conditions(item, "unless");
    const auto floor = index_member(item, "floor", drawing.floors, Noun::floor);
    change.not_priced = item.text_or("not_priced", "");
    FloorIds nowhere;
    FloorIds& ids = floor ? ids_[floor->position()] : nowhere;
    change.floor = floor.value_or(Index<Floor>{}).position();
    const auto remove = [&](const Spot& spot) {
        const auto id = as_text(spot, item.findings());
        if (!id || !floor) return;
        change.removes.push_back(*id);
        if (ids.count(*id) > 0) return;
        std::vector<std::string> known;
        for (const auto& [name, kind] : ids) known.push_back(name);
        item.report(problems::name_unknown(spot, Noun::drawn_part, *id, nearest(*id, known)));
    };
    item.items("removes", remove, caps::drawn);
    PartsReader reader(*book_, *plan_, ids);
    reader.read(item);
    change.parts = std::move(reader.parts);
    marks.changes.emplace_back(item.here());
    marks.of_changes.push_back(std::move(reader.marks));
    drawing.changes.push_back(std::move(change));
}

/// Stairs may lead to a floor that comes after theirs, so this comes last.
void DrawingReader::check_destinations(const Parts& parts, const PartMarks& part_marks,
                                       Findings& findings) {
    for (std::size_t i = 0; i < parts.stairs.size(); ++i) {
        static_cast<void>(look_up(drawing.floors, Noun::floor, parts.stairs[i].to,
                                  part_marks.stairs_to[i].spot(), findings));
    }
}

void DrawingReader::read(Reader& root) {
    root.must_have("floors");
    root.each(
        "floors", [&](Reader& item) { read_floor(item); }, false, caps::floors);
    marks.floors = Mark(root.spot("floors"));
    if (root.sound() && drawing.floors.empty()) {
        root.report(problems::list_empty(root.spot("floors")));
    }
    root.each(
        "changes", [&](Reader& item) { read_change(item); }, false, caps::changes);
    for (std::size_t i = 0; i < drawing.floors.size(); ++i) {
        check_destinations(drawing.floors[i].parts, marks.of_floors[i], root.findings());
    }
    for (std::size_t i = 0; i < drawing.changes.size(); ++i) {
        check_destinations(drawing.changes[i].parts, marks.of_changes[i], root.findings());
    }
    root.finish();
}

} // namespace

PlanDrawing read_drawing(const Document& document, const PriceBook& book, Index<Plan> plan,
                         Findings& findings) {
    DrawingReader reader(book, plan);
    reader.drawing.file = document.source->name();
    Reader root(document.root, Path{}, findings);
    if (!root.format_is("quoin/drawing/1")) return std::move(reader.drawing);
    reader.read(root);
    if (root.sound()) check_drawing({reader.drawing, reader.marks, book, plan}, findings);
    return std::move(reader.drawing);
}

} // namespace quoin
