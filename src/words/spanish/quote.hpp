// What the price of a home, line by line, is told with, in Spanish.
#pragma once

#include "words/quote.hpp"

namespace quoin::spanish {

inline constexpr QuoteWords quote = {
    .title = "Precio de la vivienda y pago mensual",
    .base_price = "Plano {}, precio base",
    .elevation = "Fachada {}",
    .lot_premium = "Recargo del lote {}",
    .named = "{}: {}",
    .times = "{}{} x {}",
    .no_cost = "sin costo",
    .in_package = "en un paquete",
    .contract_price = "Precio del contrato",
    .requests =
        "Solicitudes especiales: no están en el precio y el constructor aún debe confirmarlas",
    .request = "{}: {}{}",
    .estimated = ", con un costo estimado de {}",
    .open_choices = "Por elegir, sin costo",
    .open_choice = "{}: {} (si usted no elige: {})",
    .incentives = "Incentivos",
    .towards = "{0}: {2} para {1}",
    .use = {{{IncentiveUse::price, "el precio"},
             {IncentiveUse::options, "opciones"},
             {IncentiveUse::closing_costs, "costos de cierre"},
             {IncentiveUse::points, "puntos"},
             {IncentiveUse::buydown, "una reducción temporal de la tasa (buydown)"}}},
    .only_with =
        "Este incentivo se otorga solo con un préstamo de {}. Usted puede elegir cualquier "
        "prestamista, pero con otro renuncia a este incentivo.",
    .deposits = "Depósitos (parte del efectivo necesario)",
    .earnest_money = "depósito de buena fe, con el contrato",
    .option_share = "depósito por opciones, al elegirlas",
    .paid_so_far = "pagado hasta ahora",
    .month = "Pago mensual",
    .cash = "Efectivo necesario y efectivo para el cierre",
};

} // namespace quoin::spanish
