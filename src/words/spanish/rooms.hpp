// The floor plan, in Spanish.
#pragma once

#include "words/rooms.hpp"

namespace quoin::spanish {

inline constexpr RoomsWords rooms = {
    .title = "Distribución de la casa",
    .no_drawing = "La lista de precios no tiene el dibujo de este plano.",
    .floor = "{}: {} pies² habitables",
    .other_floor = "{}",
    .room = "espacio",
    .size = "medidas",
    .square_feet = "pies²",
    .brought_by = "con {}",
    .size_of_room = "{} x {}",
    .up_to = "hasta {}",
    .sizes_as_drawn = "Las medidas van de pared a pared según el dibujo, a la pulgada; los pies² "
                      "llegan al centro de las paredes interiores y al exterior de las exteriores. "
                      "Deciden los planos de construcción.",
    .drawing = "{}, {}: distribución",
    .room_and_size = "{}, {}",
    .up = "SUBE",
    .down = "BAJA",
    .refrigerator = "REF",
    .washer = "L",
    .dryer = "S",
    .furnace = "CALEF",
    .water_heater = "CA",
    .in_color = "En color: lo que aportan sus opciones.",
    .scale = "10 pies",
};

} // namespace quoin::spanish
