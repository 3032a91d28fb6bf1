// Answering how the home lies, as chosen.
#include <quoin/answers/rooms.hpp>

#include <algorithm>

#include "pricebook/walls.hpp"
#include <quoin/home/rules.hpp>
#include <quoin/pricebook/drawn.hpp>

namespace quoin {
namespace {

/// The home in hand, and the same one with nothing chosen.
struct TwoHomes {
    const PriceBook& book;
    const Selection& selection;
    Selection bare;
};

/// The choice in force, whether it was made or comes first.
bool has_choice(const PriceBook& book, const Selection& selection, const DrawnIf& wanted) {
    const Pick* pick = selection.find(wanted.option->option);
    if (pick != nullptr) return pick->choice == wanted.choice;
    const bool comes =
        std::any_of(selection.picks.begin(), selection.picks.end(), [&](const Pick& one) {
            return at(book.options, one.option).brings(*wanted.option);
        });
    const Pick first{wanted.option->option, {}, Index<Choice>{}};
    return wanted.choice == first.choice && (comes || comes_with_plan(book, first, selection.plan));
}

bool has(const PriceBook& book, const Selection& selection, const DrawnIf& wanted) {
    if (wanted.elevation) return selection.elevation == wanted.elevation;
    if (wanted.grade) return at(book.lots, selection.lot).grade == wanted.grade;
    if (wanted.choice) return has_choice(book, selection, wanted);
    return holds(book, selection, *wanted.option);
}

/// The options that were chosen for a change: without them it would not be made.
std::vector<BroughtBy> brought_by(const TwoHomes& homes, const DrawingChange& change) {
    std::vector<BroughtBy> by;
    for (const DrawnIf& wanted : change.when) {
        if (!wanted.option || has(homes.book, homes.bare, wanted)) continue;
        const Option& option = at(homes.book.options, wanted.option->option);
        by.push_back({option.id, option.name});
    }
    return by;
}

/// Who brings each part of one drawing.
class Bringers {
  public:
    Bringers(const TwoHomes& homes, const PlanDrawing& drawing) {
        for (const DrawingChange& change : drawing.changes) {
            by_.push_back(brought_by(homes, change));
        }
    }
    [[nodiscard]] std::vector<BroughtBy> of(std::optional<Index<DrawingChange>> change) const {
        return change ? by_.at(change->position()) : std::vector<BroughtBy>{};
    }

  private:
    std::vector<std::vector<BroughtBy>> by_;
};

template <class Part>
std::vector<OnFloor<Part>> on_floor(const std::vector<Drawn<Part>>& drawn,
                                    const Bringers& bringers) {
    std::vector<OnFloor<Part>> parts;
    for (const Drawn<Part>& one : drawn) parts.push_back({*one, bringers.of(one.by)});
    return parts;
}

/// From twice an area in square hundredths of a foot.
Decimal square_feet(std::int64_t twice) {
    constexpr std::int64_t half_square_hundredth = Decimal::one / 20'000;
    return Decimal::billionths(std::abs(twice) * half_square_hundredth);
}

/// Nine parts in ten.
bool nearly_fills(const Outline& clear, const Extent& extent) {
    return twice_area(clear) * 10 >= 2 * width_of(extent) * depth_of(extent) * 9;
}

FloorOfPlan floor_of(const PriceBook& book, const FloorDrawn& drawn, const Bringers& bringers) {
    FloorOfPlan floor;
    floor.id = drawn.floor->id;
    floor.name = drawn.floor->name;
    std::vector<WalledRoom> walled;
    for (const Drawn<Room>& room : drawn.rooms) walled.push_back({room->outline, room->open});
    const Walls walls(walled);
    for (std::size_t i = 0; i < drawn.rooms.size(); ++i) {
        const Drawn<Room>& room = drawn.rooms[i];
        const Extent extent = extent_of(walls.clear(i));
        FloorRoom one{*room,
                      room->area ? at(book.areas, *room->area).id : "",
                      square_feet(twice_area(room->outline)),
                      in_feet(width_of(extent)),
                      in_feet(depth_of(extent)),
                      nearly_fills(walls.clear(i), extent),
                      bringers.of(room.by)};
        if (room->living) floor.square_feet = floor.square_feet + one.square_feet;
        floor.rooms.push_back(std::move(one));
    }
    floor.openings = on_floor(drawn.openings, bringers);
    floor.stairs = on_floor(drawn.stairs, bringers);
    floor.symbols = on_floor(drawn.symbols, bringers);
    return floor;
}

} // namespace

RoomsAnswer rooms(const Sitting& sitting) {
    const PriceBook& book = sitting.book();
    const Selection& selection = sitting.inquiry().selection;
    RoomsAnswer answer;
    answer.heading = heading_of(sitting);
    answer.plan = at(book.plans, selection.plan).id;
    const PlanDrawing* drawing = sitting.drawings().of(selection.plan);
    if (drawing == nullptr) return answer;
    TwoHomes homes{book, selection, selection};
    homes.bare.picks.clear();
    const auto made =
        changes_made(*drawing, [&](const DrawnIf& wanted) { return has(book, selection, wanted); });
    const Bringers bringers(homes, *drawing);
    for (const FloorDrawn& floor : floors_drawn(*drawing, made)) {
        answer.floors.push_back(floor_of(book, floor, bringers));
    }
    for (const Index<DrawingChange> change : made) {
        const std::string& note = at(drawing->changes, change).not_priced;
        if (!note.empty()) answer.notes.push_back(note);
    }
    return answer;
}

} // namespace quoin
