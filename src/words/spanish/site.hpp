// The lots and the plans of a community, in Spanish.
#pragma once

#include "words/site.hpp"

namespace quoin::spanish {

inline constexpr SiteWords site = {
    .title = "Lotes y planos",
    .figured_under = "Cada cambio que sigue se calcula con {}: {}",
    .lot = "lote",
    .ground = "terreno",
    .plans = "planos",
    .for_you = "para usted",
    .premium = "recargo",
    .every_plan = "todos",
    .yours = "el suyo",
    .plan_fits = "su plano cabe",
    .plan_does_not_fit = "su plano no cabe",
    .measured = "{} {}{}",
    .flood_zone = "en zona de inundación",
    .plan = "plano",
    .base_price = "precio base",
    .size = "{} pies², {} dorm., {} baños",
    .fits_your_lot = "cabe en su lote",
    .does_not_fit_your_lot = "no cabe en su lote",
    .move = "{} en el precio, {} al mes, {} en el efectivo necesario",
    .no_loan = "{} en el precio; este préstamo no está disponible: {}",
    .elevation = "{}: {}",
    .falls_out = "se quitaría: {} ({})",
    .map = "Mapa de los lotes",
    .map_lot = "Lote {}, {}",
    .your_lot = "su lote",
    .too_small = "no cabe",
    .north = "N",
    .scale = "{} pies",
    .survey_decides =
        "El ancho y los retiros de los lotes vienen de la lista de precios. El levantamiento "
        "topográfico y los planos del permiso deciden qué se puede construir y dónde.",
};

} // namespace quoin::spanish
