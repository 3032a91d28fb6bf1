// What can move before the closing, in Spanish.
#pragma once

#include "words/shift.hpp"

namespace quoin::spanish {

inline constexpr ShiftWords shift = {
    .title = "Qué puede cambiar antes del cierre",
    .contract_price = "precio del contrato según la cotización {}",
    .scenario = "{}: {} al mes, {} de efectivo necesario. {}",
    .as_quoted = "según la cotización",
    .price = "precio {}%",
    .options = "opciones {}",
    .appraisal = "tasación {}%",
    .month_at = "pago mensual con",
    .cash_at = "efectivo necesario con",
    .not_available = "no disponible",
    .refused = "{}: {}",
    .lock_costs = "Lo que cuesta cada bloqueo de la tasa con {} (* su bloqueo)",
    .lock = "bloqueo de la tasa",
    .lock_days = "{} días",
    .lock_ends = "si se bloquea hoy, vence",
    .lock_ends_on = "{:us}",
    .ends_before_closing = "antes del cierre",
    .lock_points = "puntos con la tasa de hoy",
    .no_such_rate = "tasa no ofrecida",
    .lock_cash = "cambio en el efectivo necesario",
    .if_income_changes =
        "Si cambian los ingresos: la parte para la vivienda y la tasa más alta dentro "
        "de los límites",
    .income = "ingresos",
    .income_now = "hoy",
    .month = "al mes",
    .housing = "relación vivienda-ingreso",
    .with_debts = "DTI",
    .within = "dentro de los límites",
    .yes = "sí",
    .no = "no",
    .up_to_rate = "tasa más alta",
    .no_rate = "ninguna tasa",
    .in_steps = "en pasos enteros",
    .limits = "Los límites: {}relación deuda-ingreso (DTI) {}{}{}{}. Fuente: {}.",
    .limit_of_housing = "relación vivienda-ingreso {}, ",
    .limit_automated = " ({} con evaluación automatizada)",
    .limit_of_residual = ", y el ingreso residual",
    .passes_by_residual = "; la DTI supera su límite, pero se acepta porque el ingreso residual es "
                          "al menos el {} de la guía",
    .least_income = "Ingreso mensual más bajo que cumple con los límites con la tasa de hoy: "
                    "{}{}.{}",
    .least_income_automated = "; {} con evaluación automatizada",
    .no_rate_automated = " Con evaluación automatizada, ninguna tasa cumple con los límites.",
    .highest_rate_automated = " Tasa más alta con evaluación automatizada: {}{}.",
    .highest_in_steps = " ({} en pasos enteros)",
    .no_limits = "No se muestran límites para los ingresos: {}.",
    .steps_no_forecast =
        "Una cifra con signo es la diferencia con la cotización. Nadie sabe cómo estarán las tasas "
        "en el cierre: estos son pasos, no un pronóstico. En cada paso, todas las tasas de la hoja "
        "de tasas se mueven juntas, cada una con sus puntos. Hasta que usted bloquee una tasa, "
        "puede ser cualquiera de estas, o ir más allá.",
    .ratios_at_note_rate =
        "Las relaciones se calculan sobre el ingreso bruto mensual. Usan la tasa del pagaré o, si "
        "la tasa puede subir, la tasa con la que el programa evalúa a los compradores. Cuando aquí "
        "cambian los ingresos, los impuestos sobre ellos no cambian. Las relaciones son guías de "
        "las reglas publicadas, no una aprobación: los prestamistas examinan más cosas y pueden "
        "aceptar más o menos. Los ingresos y las deudas son datos privados. Se muestran porque "
        "están en la consulta.",
};

} // namespace quoin::spanish
