// "How does the home lie?" The floors of the plan as chosen, room by room, with what each option
// brings to them.
//
// Lengths are hundredths of a foot, as in the drawing. Clear sizes are from wall to wall.
#pragma once

#include <string>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/pricebook/drawing.hpp>

namespace quoin {

/// A chosen option that something on a floor is there for.
struct BroughtBy {
    std::string option; ///< id
    std::string name;
};

/// A part of a drawing, with the options without which it would not be there.
template <class Part>
struct OnFloor {
    Part part;
    std::vector<BroughtBy> by; ///< empty: it comes with the plan, the elevation or the lot
};

struct FloorRoom {
    Room room;
    std::string area; ///< id of the area of the home that its options stand under; may be empty
    Decimal square_feet;
    Decimal width; ///< clear, of the smallest rectangle around it
    Decimal depth;
    bool rectangular = true; ///< fills that rectangle, or nearly so
    std::vector<BroughtBy> by;
};

struct FloorOfPlan {
    std::string id;
    std::string name;
    Decimal square_feet; ///< of the rooms to live in
    std::vector<FloorRoom> rooms;
    std::vector<OnFloor<Opening>> openings;
    std::vector<OnFloor<Stairs>> stairs;
    std::vector<OnFloor<Symbol>> symbols;
};

struct RoomsAnswer {
    Heading heading;
    std::string plan;                ///< id
    std::vector<FloorOfPlan> floors; ///< from the lowest; none: the price book has no drawing of it
    std::vector<std::string> notes;  ///< why sizes that prices rest on stay as they are
};

[[nodiscard]] RoomsAnswer rooms(const Sitting& sitting);

} // namespace quoin
