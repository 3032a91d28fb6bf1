// The floor plan, in English.
#pragma once

#include "words/rooms.hpp"

namespace quoin::english {

inline constexpr RoomsWords rooms = {
    .title = "Floor plan",
    .no_drawing = "The price book has no drawing of this plan.",
    .floor = "{}: {} sq ft to live in",
    .other_floor = "{}",
    .room = "room",
    .size = "size",
    .square_feet = "sq ft",
    .brought_by = "with {}",
    .size_of_room = "{} x {}",
    .up_to = "up to {}",
    .sizes_as_drawn =
        "Sizes are from wall to wall as drawn, to the inch; square feet are to the middle of inner "
        "walls and the outside of outer ones. The construction drawings decide.",
    .drawing = "{}, {}: floor plan",
    .room_and_size = "{}, {}",
    .up = "UP",
    .down = "DN",
    .refrigerator = "REF",
    .washer = "W",
    .dryer = "D",
    .furnace = "FURN",
    .water_heater = "WH",
    .in_color = "In color: what your options bring.",
    .scale = "10 ft",
};

} // namespace quoin::english
