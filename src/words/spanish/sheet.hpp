// What the buyer takes home, in Spanish.
#pragma once

#include "words/sheet.hpp"

namespace quoin::spanish {

inline constexpr SheetWords sheet = {
    .page = "{}: plano {} en el lote {}",
    .home = "Plano {}, lote {}",
    .home_is = "{}, {} pies cuadrados, fachada {}",
    .home_without_style = "{} pies cuadrados, fachada {}",
    .buyer = "Para {}",
    .month = "al mes, con impuestos y seguro",
    .month_on_land = "Al principio {}, con impuestos solo sobre el terreno",
    .month_bought_down = "El primer año {}, con reducción (buydown)",
    .down_payment = "pago inicial",
    .down = "{} ({})",
    .to_close = "efectivo para el cierre",
    .to_come_back = "efectivo que recibe al cierre",
    .not_available = "No disponible: {}",
    .estimate =
        "Estimación al {:es}, con tasas del {:es} de {}{}. No es una Estimación del Préstamo "
        "(Loan Estimate), ni una aprobación, ni una oferta de préstamo.",
    .sample = " (de muestra)",
    .in_the_home = "Lo que incluye la vivienda",
    .plan_and_lot = "Plano y lote",
    .choice = "{} (si no, {})",
    .requests = "Solicitado: no está en el precio y falta confirmarlo",
    .incentives = "Incentivos",
    .drawings = "Dibujo del plano y del lote",
    .lot = "Lote {}",
    .drawn =
        "Dibujado a escala. Deciden los planos de construcción y el levantamiento topográfico.",
    .loans = "Préstamos lado a lado",
    .calendar = "Cuándo se debe pagar el efectivo",
    .dates = "Fechas",
    .deposits = "Depósitos",
    .rates_good_through = "tasas vigentes hasta",
    .lock_ends = "bloqueo de tasa de hoy, hasta",
    .price_book_good_through = "precios vigentes hasta",
    .closing = "cierre",
    .first_payment = "primer pago",
    .table_day = "{:us}",
    .notes = "Lo que conviene saber",
    .catch_of = "{}: {}",
    .decides = "Los préstamos los da un originador con licencia. Deciden las reglas del programa y "
               "las leyes locales. Usted puede elegir cualquier prestamista.",
    .license = "Licencia del prestamista: {}.",
    .rates_hold = "Una tasa solo es firme cuando se bloquea.",
    .rates_out_of_date = "Su último día ya pasó: pida tasas nuevas.",
    .costs = "Impuestos, seguro, cuotas de la HOA y costos de cierre: los registrados para {}{}, a "
             "montos de hoy.",
    .adjustable =
        "Tasa ajustable: la APR supone que el índice no cambia. Cambiará, y el pago con él.",
    .extra = "El capital adicional de {} es opcional. No está en el pago mensual ni en la APR.",
    .work = "* Trabajo de gas, electricidad, plomería o estructura: debe cumplir el código local, "
            "necesita un permiso y debe hacerlo un profesional con licencia, ahora o después.",
    .prepared_by = "Lo preparó",
    .originator = "Originador de préstamos con licencia",
    .license_number = "Número de licencia",
    .telephone = "Teléfono",
    .gone_through = "Fecha en que lo revisaron juntos",
    .foot = "Estimación al {:es}. No es una aprobación ni una oferta de préstamo.",
    .of = "de",
};

} // namespace quoin::spanish
