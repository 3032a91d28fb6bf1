// What stands in rooms, drawn as draftsmen draw it.
#pragma once

#include <string>
#include <vector>

#include "plan_pens.hpp"
#include <quoin/answers/rooms.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// Letters on a symbol or beside stairs, about their middle.
struct Letters {
    std::string text;
    Point middle;
    std::int64_t size = 0; ///< of the font
    bool chosen = false;
};

/// Draws a symbol; what stands against a wall has its back to one of the sides of its room.
/// `paired`: a sink in a vanity, or the vanity around it.
void draw_symbol(const Symbol& symbol, bool chosen, bool paired, const std::vector<Outline>& rooms,
                 Pens& pens, std::vector<Letters>& letters, const Catalogue& say);

/// The stairs of a floor: treads, walking lines, and whether they lead up. Two flights may lie over
/// each other. Precondition: the floor is one of the answer.
void draw_stairs(const RoomsAnswer& answer, const FloorOfPlan& floor, Pens& pens,
                 std::vector<Letters>& letters, const Catalogue& say);

} // namespace quoin
