// An answer in one line, in Spanish.
#pragma once

#include "words/brief.hpp"

namespace quoin::spanish {

inline constexpr BriefWords brief = {
    .a_month = "{} al mes",
    .a_month_in_all = "{} al mes en total",
    .more_a_month = "{} al mes",
    .cash_needed = "{} de efectivo necesario",
    .more_cash = "{} de efectivo necesario",
    .against = "frente a {}",
    .loan = "{}: {} (APR {}), {}, pago inicial {}{}",
    .adjustable = ", ajustable después de {}",
    .estimate = "estimado, {:es}",
    .sample_estimate = "estimado con tasas de muestra, {:es}",
    .estimates = "Son estimados al {:es}.",
    .sample_estimates = "Son estimados con tasas de muestra, al {:es}.",
    .priced = "{}: {}",
    .together = "sus opciones juntas",
    .in_home = "{}, ya está en su vivienda",
    .up_to = "hasta {}",
    .no_price = "{}: ningún precio sirve",
    .on_lot = "lote {}",
    .worth = "valor {}",
    .closest = "la vivienda más cercana {}",
    .at_rate = "con {}: {} al mes",
    .way = "{}: {} en el cierre, {} al mes",
    .way_estimated = "{}: unos {}",
};

} // namespace quoin::spanish
