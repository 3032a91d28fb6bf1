// The programs and rates that can be used, in Spanish.
#pragma once

#include "words/programs.hpp"

namespace quoin::spanish {

inline constexpr ProgramsWords programs = {
    .title = "Programas de préstamo y sus tasas",
    .ladder = "{}, bloqueo de la tasa por {} días: {}",
    .rung = "{} con {} puntos",
    .not_available = "No disponible: {}.",
    .points_before_adjustments =
        "Los puntos son un porcentaje del monto del préstamo, antes de los ajustes por puntaje de "
        "crédito, relación préstamo-valor (LTV) y plazo del préstamo. Los puntos bajo cero son un "
        "crédito del prestamista. La APR corresponde a un préstamo en particular: 'quoin compare' "
        "la muestra junto a cada tasa de interés.",
};

} // namespace quoin::spanish
