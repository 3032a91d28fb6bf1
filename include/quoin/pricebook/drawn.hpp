// Drawn: a plan's floors as a home has them, once the changes that its options bring are made.
//
//   const auto made = changes_made(drawing, [&](const DrawnIf& one) { return home_has(one); });
//   for (const FloorDrawn& floor : floors_drawn(drawing, made)) { ... floor.rooms[0]->name ... }
//
// What is drawn stays the drawing's own: it must outlive what is here.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include <quoin/exact/index.hpp>
#include <quoin/pricebook/drawing.hpp>

namespace quoin {

/// A room, an opening, stairs or a symbol, and what brought it.
template <class Part>
struct Drawn {
    const Part* part = nullptr;
    std::optional<Index<DrawingChange>> by = {}; ///< nothing: it is there from the first

    const Part& operator*() const { return *part; }
    const Part* operator->() const { return part; }
};

/// What stands on a floor: first what was there, in its order, then what changes brought anew.
struct FloorDrawn {
    const Floor* floor = nullptr; ///< its id and its name
    std::vector<Drawn<Room>> rooms;
    std::vector<Drawn<Opening>> openings;
    std::vector<Drawn<Stairs>> stairs;
    std::vector<Drawn<Symbol>> symbols;
};

/// The changes, in their order, of which all of `when` and none of `unless` holds.
[[nodiscard]] std::vector<Index<DrawingChange>>
changes_made(const PlanDrawing& drawing, const std::function<bool(const DrawnIf&)>& has);

/// The floors, from the lowest, after these changes and no others, which come in their order.
[[nodiscard]] std::vector<FloorDrawn>
floors_drawn(const PlanDrawing& drawing, const std::vector<Index<DrawingChange>>& changes);

} // namespace quoin
