// What a builder's money can do, in Spanish.
#pragma once

#include "words/credit.hpp"

namespace quoin::spanish {

inline constexpr CreditWords credit = {
    .title = "Lo que se puede hacer con {} del constructor",
    .contract_price = "Precio del contrato sin ese dinero: {}",
    .without_it_month = "{}: {} al mes sin ese dinero. {}",
    .cap_of_price = "El vendedor y otras partes interesadas pueden contribuir hasta el {0} del "
                    "precio, es decir, {1}.{3}{2}",
    .cap_of_value =
        "El vendedor y otras partes interesadas pueden contribuir hasta el {0} del valor "
        "de la vivienda, es decir, {1}.{3}{2}",
    .cap_on_concessions = " Solo los gastos prepagados, los buydowns y el cargo de financiamiento "
                          "(funding fee) cuentan para ese límite.",
    .cap_taken = " De eso ya se usan {}.",
    .way = {{{CreditWay::off_price, "rebaja del precio"},
             {CreditWay::costs, "costos de cierre y prepagados"},
             {CreditWay::points, "puntos"},
             {CreditWay::buydown_1_0, "reducción temporal 1-0"},
             {CreditWay::buydown_2_1, "reducción temporal 2-1"},
             {CreditWay::buydown_3_2_1, "reducción temporal 3-2-1"},
             {CreditWay::upfront_fee, "cargo inicial o prima única"}}},
    .in_cash = "{}, en efectivo",
    .with_points = "{}: {}",
    .not_to_be_had = "{}: {}",
    .takes = "se necesitan {}",
    .takes_more_than_cap = "se necesitan {}, más de lo que deja el límite a las contribuciones",
    .no_lower_rate = "no hay una tasa más baja disponible",
    .not_with_this_loan = "no con este préstamo",
    .without_it = "sin ese dinero",
    .each_use = "todo para un solo uso",
    .note_rate = "tasa de interés",
    .apr = "APR",
    .month_now = "al mes, ahora",
    .after_three_years = "después de tres años",
    .cash_needed = "efectivo necesario",
    .no_use_for = "sin usar",
    .costs_after = "costo, con lo que aún se debe, tras",
    .off_price = "rebaja del precio",
    .buydown = "buydown",
    .fee = "cargo",
    .pays = "para puntos y costos",
    .cost_over = "costo en {}",
    .no_apr = "no hay",
    .no_buydown = "no hay",
    .fee_in_cash = "efectivo",
    .whole_loan = "todo el préstamo",
    .bests = "La mejor combinación para cada meta",
    .lowest_payment = "pago más bajo ahora",
    .least_cash = "menos efectivo",
    .least_cash_is_given = "menos efectivo: el pago inicial toma todo el efectivo que usted tiene, "
                           "con cualquier combinación",
    .least_cost = "costo más bajo en {}",
    .best = "{0}: {1}{2}. Tasa de interés {3}, APR {4}. {5} al mes ahora, {6} al mes después "
            "de tres años. Efectivo necesario: {7}. Costo en {9}: {8}.",
    .pays_nothing = "el dinero no se usa",
    .goes_off_price = "{} de rebaja del precio",
    .goes_to_points = "{} para puntos ({} con {} puntos)",
    .goes_to_buydown = "{} para un buydown {}",
    .goes_to_upfront = "{} para {}",
    .goes_to_costs = "{} para costos de cierre",
    .goes_to_prepaids = "{} para gastos prepagados",
    .lost_without_use = "; {} quedan sin usar",
    .lost_over_cap = "; {} superan el límite a las contribuciones",
    .frontier = "Combinaciones que ninguna otra supera a la vez en pago, efectivo y costo{}",
    .thinned = " ({} de {}, espaciadas)",
    .money_on_top =
        "Este dinero se suma a los incentivos y créditos que ya se cuentan aquí. El límite a "
        "las contribuciones los cubre a todos juntos. El dinero paga primero puntos, después el "
        "buydown, los costos de cierre, los gastos prepagados y un cargo inicial o una prima en "
        "efectivo. Nunca paga el pago inicial. En ninguna combinación paga usted más de su propio "
        "dinero en costos y puntos que sin él. El dinero que se acredita a las opciones baja el "
        "precio, y aquí cuenta como rebaja del precio.",
    .cost_spent_and_owed =
        "El costo es lo que usted ha gastado más lo que aún debe: efectivo, pagos menos lo que un "
        "buydown paga de ellos, seguros, impuestos, cuotas y el saldo del préstamo. Los pagos "
        "mensuales, ahora y después de tres años, cuentan los impuestos completos, cuando el "
        "condado valore la vivienda terminada. La rebaja del precio va en dólares enteros. Entre "
        "los montos que se muestran, las cifras cambian de manera uniforme.",
    .money_with_conditions =
        "Si el dinero depende de un prestamista, de una compañía de títulos o de una fecha, sus "
        "condiciones lo dicen. Usted puede elegir cualquier prestamista, y entonces quizá no "
        "reciba ese dinero. Compare el costo total.",
    .paid_in_cash =
        "Un cargo inicial pagado en efectivo no se toma prestado y no genera intereses. Una prima "
        "única reemplaza el seguro hipotecario mensual. Su certificado dice si se devuelve una "
        "parte cuando el préstamo termina antes.",
};

} // namespace quoin::spanish
