// The cash that a loan takes, in Spanish.
#pragma once

#include "words/cash.hpp"

namespace quoin::spanish {

inline constexpr CashWords cash = {
    .title = "El efectivo que usted necesita",
    .month = "{}: {} al mes. {}",
    .cash = "Efectivo",
    .points = "puntos",
    .lender_credit = "crédito del prestamista",
    .principal_reduced = "capital que se reduce en el cierre",
    .single_premium = "{}, prima única",
    .premium_in_cash = "{}, en efectivo",
    .appraisal_gap = "de eso: exceso sobre la tasación",
    .cash_needed = "efectivo necesario",
    .left_to_bring = "efectivo para el cierre",
    .lender_credit_reduces =
        "El crédito del prestamista con esta tasa de interés es mayor que sus costos de cierre y "
        "gastos prepagados. Los otros {} reducen el capital en el cierre. El monto y el pago del "
        "préstamo no cambian, y el préstamo termina antes.",
    .lender_credit_lost =
        "Usted perdería {} del crédito del prestamista con esta tasa de interés. Ese crédito solo "
        "paga costos de cierre y gastos prepagados, y estos suman menos. Una tasa más baja viene "
        "con un crédito menor.",
    .when = "Cuándo se paga",
    .closing_costs = "Costos de cierre",
    .buyers_sums = "total del comprador",
    .when_ordered = "al encargarse",
    .in_finance_charge = "{} (cargo financiero)",
    .prepaids = "Gastos prepagados",
    .prepaid_interest =
        [](int days, Money a_day) {
            return fmt::format("intereses, {} a {} por día",
                               days == 1 ? std::string("1 día") : fmt::format("{} días", days),
                               dollars(a_day));
        },
    .prepaid_insurance =
        [](int months) {
            return months == 1 ? std::string("seguro, 1 mes")
                               : fmt::format("seguro, {} meses", months);
        },
    .tax_bill = "impuestos sobre la propiedad y cargos del distrito",
    .bill_due = "vence el {:us}",
    .no_escrow = "Cuenta de depósito en garantía (escrow): no hay. Se renunció a ella, o no se "
                 "conocen las fechas de pago.",
    .escrow = "Cuenta de depósito en garantía (escrow): {} en el cierre y luego {} al mes. Siempre "
              "conserva {} o más.",
    .escrow_month = "mes",
    .escrow_in = "depósitos",
    .escrow_bills = "facturas",
    .escrow_balance = "saldo",
    .calendar_month = "{}/{}",
    .escrow_bill = "{}, vence el {:us}: {}",
    .set_from_settled = "Estos depósitos se calculan con los impuestos completos, cuando el "
                        "condado valore la vivienda terminada.",
    .set_from_land = "Si el prestamista los calcula con las facturas del primer año, por ejemplo "
                     "con impuestos solo sobre el terreno, usted deposita {} al mes en el primer "
                     "año.",
    .analysis = {"La revisión de la cuenta de escrow tras el primer año indica {}.",
                 "La revisión de la cuenta de escrow tras el segundo año indica {}.",
                 "La revisión de la cuenta de escrow tras el tercer año indica {}.",
                 "La revisión de la cuenta de escrow tras el cuarto año indica {}."},
    .finds_short = "que faltan {}. Usted los repone en los 12 meses siguientes{}",
    .finds_over = "que sobran {}. Usted los recupera{}",
    .finds_nothing = "que no falta nada{}",
    .more_a_month = ", y deposita {} más al mes",
    .less_a_month = ", y deposita {} menos al mes",
    .credits = "Créditos",
    .used_for = "se usa para {}",
    .without_use = "sin usar: no queda nada que pueda pagar",
    .cap_of_price =
        "El vendedor y otras partes interesadas pueden contribuir hasta el {} del precio. De estos "
        "créditos, {} cuentan para ese límite.",
    .cap_of_value =
        "El vendedor y otras partes interesadas pueden contribuir hasta el {} del valor "
        "de la vivienda. De estos créditos, {} cuentan para ese límite.",
    .over_cap = "{} superan ese límite y no se usan aquí. Si de todos modos se dieran, se "
                "restarían del precio al calcular la relación préstamo-valor (LTV), que sería de "
                "{}.",
    .buydown =
        "Reducción temporal de la tasa (buydown): {} en el cierre, de los cuales usted paga {}",
    .bought_down =
        "año {0}: usted paga {2} de capital e intereses al mes, como si la tasa fuera de {1}; el "
        "buydown paga los otros {3}",
    .after_buydown = "después, {} al mes; usted debe calificar con la tasa del pagaré, {}",
    .cost_of_credit = "Lo que cuesta el préstamo",
    .prepaid_finance_charge = "cargo financiero prepagado",
    .own_part_of_buydown = "de eso: su parte del buydown",
    .amount_financed = "monto financiado",
    .finance_charge = "cargo financiero",
    .total_of_payments = "total de pagos",
    .cost_in_five_years = "en 5 años: pagado por el préstamo y sus costos, según se divulga",
    .principal_in_five_years = "en 5 años: capital pagado",
    .payments =
        [](int from, int to) {
            return from == to ? fmt::format("pago {}, según se divulga", from)
                              : fmt::format("pagos {} a {}, según se divulga", from, to);
        },
    .apr = "APR",
    .no_apr = "no hay",
    .total_interest_percentage = "porcentaje total de intereses (TIP)",
};

} // namespace quoin::spanish
