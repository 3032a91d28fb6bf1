// What the buyer takes home, in Spanish.
#pragma once

#include "words/sheet.hpp"

namespace quoin::spanish {

inline constexpr SheetWords sheet = {
    .page = "{}: plano {} en el lote {}",
    .title = "Su vivienda: precio, pago mensual y efectivo",
    .buyer = "para",
    .plan = "plano",
    .plan_and_style = "{}, {}",
    .floor_area = "superficie",
    .square_feet = "{} pies cuadrados",
    .elevation = "fachada",
    .lot = "lote",
    .as_of = "fecha de la estimación",
    .closing = "cierre",
    .price_book = "lista de precios",
    .in_force_to = "vigente hasta",
    .day = "{:es}",
    .table_day = "{:us}",
    .home = "La vivienda, línea por línea",
    .requests =
        "Solicitudes especiales: no están en el precio y el constructor aún debe confirmarlas",
    .month_of_each = "Pago mensual con cada préstamo",
    .cash = "Efectivo necesario y efectivo para el cierre",
    .estimates =
        "Estimaciones al {:es}. No son una Estimación del Préstamo (Loan Estimate), ni una "
        "aprobación, ni una oferta de préstamo. Al final se explica en qué se basan.",
    .calendar = "Cuándo se debe pagar el efectivo",
    .costs = "Costos de cierre y gastos prepagados",
    .prepaid = "prepagado: {}",
    .due = "vence el {:us}",
    .catches = "Lo que debe tener en cuenta de cada programa",
    .catch_of = "{}: {}",
    .rests = "En qué se basan estas cifras",
    .who = "Quién le dio este documento",
    .prepared_by = "Lo preparó",
    .originator = "Originador de préstamos con licencia",
    .license = "Número de licencia",
    .telephone = "Teléfono",
    .gone_through = "Fecha en que lo revisaron juntos",
};

} // namespace quoin::spanish
