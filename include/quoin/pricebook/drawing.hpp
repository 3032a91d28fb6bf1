// PlanDrawing: a plan's floors, room by room, and what options change on them.
//
// Lengths are whole hundredths of a foot. On a floor, x runs to the right and y from the front of
// the home to the back. Rooms are drawn to the outside of outer walls and to the middle of inner
// ones, so that they touch without a gap and their areas add up to the area of the floor (that is
// how finished square feet are measured: ANSI Z765).
//
//   PlanDrawing drawing = read_drawing(document, book, plan, findings);
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <quoin/exact/index.hpp>
#include <quoin/pricebook/lot.hpp>
#include <quoin/pricebook/option.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

struct Area;
struct Document;
struct Elevation;
class Findings;
struct Plan;
struct PriceBook;

// How much a drawing may hold.
namespace caps {
inline constexpr std::size_t floors = 8;
inline constexpr std::size_t drawn = 200; ///< of a kind on a floor, or in a change
inline constexpr std::size_t corners = 100;
inline constexpr std::size_t changes = 100;
inline constexpr std::size_t conditions = 20; ///< of a change, of either kind
} // namespace caps

/// A place, in hundredths of a foot.
struct Point {
    std::int64_t x = 0;
    std::int64_t y = 0;

    friend bool operator==(const Point&, const Point&) = default;
};

/// A closed line through its corners; the last one joins the first.
using Outline = std::vector<Point>;

struct Room {
    std::string id;
    std::string name;
    std::optional<Index<Area>> area; ///< of the home, that its options stand under
    Outline outline;
    bool living = true;                ///< counts in the plan's square feet
    bool open = false;                 ///< a porch, a deck, a patio: no walls of its own
    std::vector<std::string> measures; ///< of the plan, whose square feet it is a part of
};

enum class OpeningKind { window, door, double_door, sliding_door, garage_door, cased };
template <>
inline constexpr auto codes<OpeningKind> =
    coded<OpeningKind>({{OpeningKind::window, "window"},
                        {OpeningKind::door, "door"},
                        {OpeningKind::double_door, "double_door", "double door"},
                        {OpeningKind::sliding_door, "sliding_door", "sliding door"},
                        {OpeningKind::garage_door, "garage_door", "garage door"},
                        {OpeningKind::cased, "cased", "cased opening"}});

/// A window, a door or a doorless opening; it lies in a wall.
struct Opening {
    std::string id; ///< empty where no change takes it out
    OpeningKind kind = OpeningKind::window;
    Point from; ///< a door hinges here
    Point to;
    bool left = true; ///< a door opens to the left of the way from its hinge
};

/// A flight; the floor that it leads to has one in the same place that leads back.
struct Stairs {
    std::string id;
    Outline outline;
    std::string to; ///< id of the floor
    Point from;     ///< middle of the first step, seen from this floor
    Point toward;   ///< where the walking line ends
};

/// What stands in a room, drawn as draftsmen draw it.
enum class SymbolKind {
    counter,
    island,
    sink,
    range,
    refrigerator,
    ovens,
    tub,
    shower,
    toilet,
    vanity,
    washer,
    dryer,
    fireplace,
    shelves,
    lockers,
    bench,
    furnace,
    water_heater,
    steps,
    vault, ///< where a ceiling rises, as a dashed line
    tray,
    car,
};
template <>
inline constexpr auto codes<SymbolKind> =
    coded<SymbolKind>({{SymbolKind::counter, "counter"},
                       {SymbolKind::island, "island"},
                       {SymbolKind::sink, "sink"},
                       {SymbolKind::range, "range"},
                       {SymbolKind::refrigerator, "refrigerator"},
                       {SymbolKind::ovens, "ovens"},
                       {SymbolKind::tub, "tub"},
                       {SymbolKind::shower, "shower"},
                       {SymbolKind::toilet, "toilet"},
                       {SymbolKind::vanity, "vanity"},
                       {SymbolKind::washer, "washer"},
                       {SymbolKind::dryer, "dryer"},
                       {SymbolKind::fireplace, "fireplace"},
                       {SymbolKind::shelves, "shelves"},
                       {SymbolKind::lockers, "lockers"},
                       {SymbolKind::bench, "bench"},
                       {SymbolKind::furnace, "furnace"},
                       {SymbolKind::water_heater, "water_heater", "water heater"},
                       {SymbolKind::steps, "steps"},
                       {SymbolKind::vault, "vault"},
                       {SymbolKind::tray, "tray"},
                       {SymbolKind::car, "car"}});

struct Symbol {
    std::string id; ///< empty where no change takes it out
    SymbolKind kind = SymbolKind::counter;
    Outline outline;
};

/// What is drawn on a floor, or what a change brings to it.
struct Parts {
    std::vector<Room> rooms;
    std::vector<Opening> openings;
    std::vector<Stairs> stairs;
    std::vector<Symbol> symbols;
};

struct Floor {
    std::string id;
    std::string name;
    Parts parts;
};

/// Holds where the home has the option at the level or better, or with the choice; has the
/// elevation; stands on a lot of the grade. One of them is said.
struct DrawnIf {
    std::optional<OptionRef> option;
    std::optional<Index<Choice>> choice;
    std::optional<Index<Elevation>> elevation;
    std::optional<Grade> grade;
};

/// What is drawn otherwise where all of `when` and none of `unless` holds. Changes apply in their
/// order; a room, an opening, stairs or a symbol takes the place of one with the same id.
struct DrawingChange {
    std::vector<DrawnIf> when;
    std::vector<DrawnIf> unless;
    std::size_t floor = 0;            ///< position among the floors
    std::vector<std::string> removes; ///< ids
    Parts parts;
    std::string not_priced; ///< why the quantities that options are priced by stay as they are
};

struct PlanDrawing {
    std::string file;
    std::vector<Floor> floors; ///< from the lowest
    std::vector<DrawingChange> changes;
};

/// Twice the area of an outline, in square hundredths of a foot; negative where it runs clockwise.
[[nodiscard]] std::int64_t twice_area(const Outline& outline);

/// Reads a drawing and holds it to its plan: outlines close and do not overlap, openings lie in
/// walls, stairs match, and areas and widths are the plan's own within 2 %, as drawn and after each
/// change. Where findings were added, the result must not be used.
[[nodiscard]] PlanDrawing read_drawing(const Document& document, const PriceBook& book,
                                       Index<Plan> plan, Findings& findings);

} // namespace quoin
