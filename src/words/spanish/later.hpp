// An option now or later, in Spanish.
#pragma once

#include "words/later.hpp"

namespace quoin::spanish {

inline constexpr LaterWords later = {
    .title = "Ahora o más adelante",
    .named = "{}: {}",
    .item = "{} ({}): {} con el constructor",
    .not_from_builder = "no disponible con el constructor: {}",
    .after = "después del cierre: unos {}. {}",
    .no_estimate = "después del cierre: la lista de precios no tiene una estimación",
    .cannot_be_had = "no disponible: {}",
    .without = "{} al mes sin la opción; {}",
    .way = {{{LaterWay::financed, "sumarla a su préstamo"},
             {LaterWay::cash, "pagar al constructor en efectivo"},
             {LaterWay::after, "pagar en efectivo tras el cierre"},
             {LaterWay::after_lent, "un préstamo personal tras el cierre"}}},
    .at_closing = "más en el cierre",
    .a_month = "más al mes",
    .after_years =
        [](int n) {
            return n == 1 ? std::string("costo tras 1 año") : fmt::format("costo tras {} años", n);
        },
    .way_barred = "{} no es posible: {}",
    .when_more = "Cuándo una forma ha costado más que otra:",
    .costs_more = "{2}, {0} ha costado más que {1}",
    .costs_over_the_home_without =
        "Cada costo es cuánto más le ha costado la vivienda con la opción, al final de ese año, "
        "que la vivienda sin ella. Incluye el saldo adicional que usted aún deba. Un signo menos "
        "significa que la opción ha bajado lo que usted paga. El costo "
        "del trabajo después del cierre es una estimación de la lista de precios, no una oferta. "
        "Los precios pueden subir, y el dinero que usted conserve puede rendir algo. Ninguna de "
        "las dos cosas se cuenta.",
    .trades_whenever = "Los trabajos de gas, electricidad, plomería o estructura deben cumplir el "
                       "código local. Requieren un permiso y un profesional con licencia, los haga "
                       "quien los haga y cuando sea.",
};

} // namespace quoin::spanish
