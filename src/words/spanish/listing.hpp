// What a price book holds, in Spanish.
#pragma once

#include "words/listing.hpp"

namespace quoin::spanish {

inline constexpr ListingWords listing = {
    .book = "{}, {}: lista de precios {}, vigente del {:es} al {:es}",
    .plan = "plano",
    .name = "nombre",
    .style = "estilo",
    .square_feet = "pies²",
    .bedrooms = "dormitorios",
    .bathrooms = "baños",
    .base_price = "precio base",
    .elevation = "fachada",
    .elevation_price = "precio de la fachada",
    .lot = "lote",
    .status = "estado",
    .premium = "recargo",
    .grade = "terreno",
    .plans = "planos",
    .flood_zone = "zona de inundación",
    .note = "nota",
    .option = "opción",
    .area = "área",
    .kind = "tipo",
    .price = "precio",
    .unit = "unidad",
    .cutoff = "decidir antes de",
    .every_plan = "todos",
    .yes = "sí",
    .no = "no",
    .price_range = "{} a {}",
    .kind_of = {{{OptionKind::upgrade, "mejora"},
                 {OptionKind::levels, "variante"},
                 {OptionKind::choice, "variante sin costo"},
                 {OptionKind::allowance, "asignación"},
                 {OptionKind::package, "paquete"}}},
};

} // namespace quoin::spanish
