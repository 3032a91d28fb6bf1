// Why a loan cannot be had for a home, in Spanish.
#pragma once

#include "words/refusals.hpp"

namespace quoin::spanish {

inline constexpr RefusalWords refusals = {
    .cannot_be_had = "{} no está disponible: {}",
    .list = {{{RuleList::maximum_ltv, "el máximo que presta este programa"},
              {RuleList::loan_limit, "el límite de préstamo del programa"},
              {RuleList::upfront_fee, "el cargo inicial del programa"},
              {RuleList::annual_fee, "el cargo anual del programa"},
              {RuleList::annual_fee_months, "el tiempo que se paga el cargo anual del programa"},
              {RuleList::contribution_cap,
               "el límite a las contribuciones del vendedor y otras partes interesadas"},
              {RuleList::points_adjustment, "el ajuste de puntos de la hoja de tasas"},
              {RuleList::mi_factors, "el precio del seguro hipotecario"},
              {RuleList::single_premium, "la prima única del seguro hipotecario"},
              {RuleList::homeowner, "la tarifa del seguro de vivienda"},
              {RuleList::ratios,
               "la parte del ingreso que el programa permite para vivienda y deudas"},
              {RuleList::residual_income, "el ingreso residual que pide el programa"}}},
    .ended = "después del {1:es} no se conoce {0}",
    .not_yet = "antes del {1:es} no se conoce {0}",
    .no_row = "en los datos no está {} para un préstamo como este",
    .term_not_offered = "el programa no tiene préstamos con este plazo",
    .place_not_eligible = "la vivienda está fuera de la zona elegible del programa",
    .score_needed = "el límite del programa depende del puntaje de crédito, y no se indicó ninguno",
    .score_below_minimum = "el puntaje de crédito es menor que el mínimo del programa",
    .base_over_program = "el monto base del préstamo, {}, supera el máximo del programa, {}; se "
                         "necesitan {} más de pago inicial",
    .base_over_area = "el monto base del préstamo, {}, supera el límite de la zona, {}; se "
                      "necesitan {} más de pago inicial",
    .all_over_program = "el monto del préstamo con la prima incluida, {}, supera el máximo del "
                        "programa, {}; para bajarlo en {}, aumente el pago inicial o pague la "
                        "prima en efectivo",
    .all_over_area = "el monto del préstamo con la prima incluida, {}, supera el límite de la "
                     "zona, {}; para bajarlo en {}, aumente el pago inicial o pague la prima en "
                     "efectivo",
    .rate_not_offered = "la hoja de tasas no tiene esa tasa para este programa, plazo y bloqueo",
    .mi_not_offered = "no hay una tarifa de seguro hipotecario para esta relación préstamo-valor "
                      "(LTV), este puntaje de crédito y este plazo",
    .insurance_not_offered = "no hay una tarifa de seguro de vivienda para una vivienda de este "
                             "valor",
    .buydown_not_allowed = "la reducción temporal de la tasa (buydown) no es compatible con la "
                           "tasa del pagaré o con el plazo del préstamo",
    .cash_short = "al efectivo de {} le faltan {} para los {} necesarios",
};

} // namespace quoin::spanish
