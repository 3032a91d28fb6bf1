// The glossary, in Spanish.
#pragma once

#include "../glossary.hpp"

namespace quoin::spanish {

inline constexpr GlossaryWords glossary = {
    .title = "Qué significan las palabras",
    .about = "Cada término como lo usa quoin, con la norma que lo nombra.",
    .source = "Fuente: {}",
    .common_practice = "Práctica común, sin fuente.",
    .name = {{{Term::contract_price, "precio del contrato"},
              {Term::plan, "plano"},
              {Term::elevation, "fachada"},
              {Term::lot_premium, "recargo del lote"},
              {Term::option, "opción"},
              {Term::package, "paquete"},
              {Term::allowance, "asignación"},
              {Term::incentive, "incentivo"},
              {Term::decide_by, "decidir antes de"},
              {Term::price_book, "lista de precios"},
              {Term::monthly_payment, "pago mensual"},
              {Term::principal_and_interest, "capital e intereses"},
              {Term::property_taxes, "impuestos sobre la propiedad"},
              {Term::homeowners_insurance, "seguro de vivienda"},
              {Term::mortgage_insurance, "seguro hipotecario"},
              {Term::dues, "cuotas de la asociación (HOA)"},
              {Term::escrow_account, "cuenta de escrow"},
              {Term::loan_amount, "monto del préstamo"},
              {Term::base_loan, "monto base del préstamo"},
              {Term::upfront_fee, "cargo inicial"},
              {Term::down_payment, "pago inicial"},
              {Term::loan_term, "plazo del préstamo"},
              {Term::interest_rate, "tasa de interés"},
              {Term::apr, "APR"},
              {Term::points, "puntos"},
              {Term::lender_credit, "crédito del prestamista"},
              {Term::rate_lock, "bloqueo de la tasa"},
              {Term::rate_sheet, "hoja de tasas"},
              {Term::fixed_rate, "tasa fija"},
              {Term::adjustable_rate, "tasa ajustable"},
              {Term::temporary_buydown, "reducción temporal de la tasa (buydown)"},
              {Term::extra_principal, "capital adicional"},
              {Term::cash_needed, "efectivo necesario"},
              {Term::cash_to_close, "efectivo para el cierre"},
              {Term::closing, "cierre"},
              {Term::closing_costs, "costos de cierre"},
              {Term::prepaids, "gastos prepagados"},
              {Term::prepaid_interest, "intereses prepagados"},
              {Term::earnest_money, "depósito de buena fe"},
              {Term::option_deposit, "depósito por opciones"},
              {Term::contribution_limit, "límite a las contribuciones"},
              {Term::appraised_value, "valor de tasación"},
              {Term::ltv, "relación préstamo-valor (LTV)"},
              {Term::housing_ratio, "relación vivienda-ingreso"},
              {Term::dti, "relación deuda-ingreso (DTI)"},
              {Term::residual_income, "ingreso residual"},
              {Term::reserves, "reservas"},
              {Term::underwriting, "evaluación del préstamo"},
              {Term::credit_score, "puntaje de crédito"},
              {Term::finance_charge, "cargo financiero"},
              {Term::amount_financed, "monto financiado"},
              {Term::total_of_payments, "total de pagos"},
              {Term::tip, "porcentaje total de intereses (TIP)"},
              {Term::loan_estimate, "Estimación del Préstamo (Loan Estimate)"},
              {Term::closing_disclosure, "Divulgación de Cierre (Closing Disclosure)"},
              {Term::loan_originator, "originador de préstamos"}}},
    .meaning =
        {{{Term::contract_price, "El precio que usted y el constructor firman: la vivienda, el "
                                 "lote y sus opciones, menos los descuentos."},
          {Term::plan, "El plano de la vivienda: sus cuartos, su tamaño y lo que cuesta antes del "
                       "lote y de las opciones."},
          {Term::elevation, "El aspecto del frente de la vivienda. Un mismo plano se puede "
                            "construir con varias fachadas."},
          {Term::lot_premium, "Lo que un lote cuesta además del precio del plano, por su vista, su "
                              "tamaño o su ubicación."},
          {Term::option,
           "Algo que usted puede agregar a la vivienda o cambiar en ella, por un precio."},
          {Term::package, "Varias opciones que se venden juntas por un solo precio."},
          {Term::allowance, "Un monto que el precio ya incluye para algo que usted elige "
                            "después. Usted paga lo que pase de ese monto."},
          {Term::incentive, "Dinero o un descuento del constructor, a menudo con condiciones sobre "
                            "cómo puede usarlo."},
          {Term::decide_by, "El último día para elegir una opción antes de que se construya esa "
                            "parte de la vivienda."},
          {Term::price_book, "La lista del constructor con planos, lotes y opciones y sus precios, "
                             "válida hasta el día que indica."},
          {Term::monthly_payment,
           "Todo lo que paga cada mes por la vivienda: el préstamo, el seguro hipotecario, los "
           "impuestos, el seguro de vivienda y las cuotas."},
          {Term::principal_and_interest,
           "La parte del pago que va al préstamo mismo. El capital reduce lo que debe; los "
           "intereses son el costo de pedir prestado."},
          {Term::property_taxes, "Impuestos que el condado y otras entidades locales cobran cada "
                                 "año sobre el valor del terreno y de la vivienda."},
          {Term::homeowners_insurance, "Seguro contra incendios, tormentas y otros daños a la "
                                       "vivienda. Los prestamistas lo exigen."},
          {Term::mortgage_insurance,
           "Seguro que protege al prestamista si no se paga el préstamo. Usted lo paga, casi "
           "siempre cuando da menos del 20% de pago inicial."},
          {Term::dues,
           "Lo que la asociación de propietarios cobra por las áreas y los servicios comunes."},
          {Term::escrow_account, "Una cuenta del prestamista que reúne cada mes una parte de sus "
                                 "impuestos y seguros y paga esas facturas por usted."},
          {Term::loan_amount,
           "Lo que usted pide prestado, con los cargos que se suman al préstamo."},
          {Term::base_loan,
           "Lo que usted pide prestado antes de que se sume algún cargo al préstamo."},
          {Term::upfront_fee, "Un cargo que un programa del gobierno cobra una sola vez, en el "
                              "cierre: en efectivo o sumado al préstamo."},
          {Term::down_payment,
           "La parte del precio que usted paga por su cuenta y no pide prestada."},
          {Term::loan_term, "El tiempo que tiene para pagar el préstamo."},
          {Term::interest_rate, "El precio anual de pedir prestado, en porcentaje de lo que debe. "
                                "No incluye los cargos."},
          {Term::apr,
           "Tasa de porcentaje anual (annual percentage rate): la tasa de interés con la mayoría "
           "de los cargos del préstamo incluidos. Sirve para comparar préstamos."},
          {Term::points, "Dinero que paga en el cierre para bajar la tasa. Un punto es el 1% del "
                         "monto del préstamo."},
          {Term::lender_credit, "Dinero que el prestamista da para sus costos de cierre porque "
                                "usted acepta una tasa más alta."},
          {Term::rate_lock, "La promesa del prestamista de mantener una tasa por cierto número de "
                            "días. Sin ella, la tasa puede cambiar."},
          {Term::rate_sheet, "La lista de tasas y puntos del prestamista para un día."},
          {Term::fixed_rate, "Una tasa que no cambia en todo el préstamo."},
          {Term::adjustable_rate, "Una tasa que puede cambiar después de los primeros años, hasta "
                                  "un límite. El pago cambia con ella."},
          {Term::temporary_buydown,
           "Dinero apartado en el cierre que baja sus pagos durante los primeros uno a tres años. "
           "El préstamo conserva su tasa completa."},
          {Term::extra_principal,
           "Dinero que usted decide pagar además del pago mensual. Así termina "
           "antes de pagar el préstamo."},
          {Term::cash_needed,
           "Todo el efectivo que usted paga desde el primer depósito hasta el cierre."},
          {Term::cash_to_close,
           "El efectivo que todavía lleva al cierre, después de contar sus depósitos y créditos."},
          {Term::closing, "El día en que usted firma el préstamo, paga y recibe la vivienda."},
          {Term::closing_costs, "Lo que cobran los prestamistas, las compañías de títulos y el "
                                "gobierno por hacer el préstamo y registrar la venta."},
          {Term::prepaids, "Gastos de ser dueño de la vivienda que paga por adelantado en el "
                           "cierre, como el primer año de seguro."},
          {Term::prepaid_interest,
           "Los intereses desde el día del cierre hasta el fin de ese mes."},
          {Term::earnest_money,
           "Un depósito que paga al firmar el contrato. Se descuenta del efectivo para el cierre."},
          {Term::option_deposit, "Un depósito que el constructor pide por las opciones que usted "
                                 "elige. Se descuenta del efectivo para el cierre."},
          {Term::contribution_limit, "Lo máximo que el constructor y otras partes interesadas en "
                                     "la venta pueden aportar para los costos de usted."},
          {Term::appraised_value,
           "Lo que vale la vivienda según un tasador con licencia. Los prestamistas prestan sobre "
           "este valor o sobre el precio, el que sea menor."},
          {Term::ltv, "El préstamo como porcentaje del valor de la vivienda. Cuanto más baja, "
                      "menos riesgo corre el prestamista."},
          {Term::housing_ratio,
           "Su pago mensual como porcentaje de su ingreso mensual antes de impuestos."},
          {Term::dti, "Su pago mensual más los pagos de sus otras deudas, como porcentaje de su "
                      "ingreso mensual antes de impuestos."},
          {Term::residual_income, "Lo que le queda para vivir cada mes después de impuestos, "
                                  "deudas, el pago mensual y los servicios públicos."},
          {Term::reserves,
           "Los ahorros que le quedan después del cierre, contados en meses de pago."},
          {Term::underwriting,
           "La revisión que hace el prestamista de sus ingresos, deudas, crédito y de la vivienda: "
           "con un programa (automatizada) o por una persona (manual)."},
          {Term::credit_score, "Un número que resume cómo ha pagado sus deudas. Los prestamistas "
                               "lo usan para fijar las tasas."},
          {Term::finance_charge,
           "Lo que cuesta el préstamo en dólares durante toda su vigencia: los "
           "intereses y los cargos que cuentan como tales."},
          {Term::amount_financed,
           "El monto del préstamo menos los cargos del préstamo que paga por adelantado."},
          {Term::total_of_payments,
           "Todo lo que habrá pagado en capital, intereses, seguro hipotecario y costos del "
           "préstamo si hace todos los pagos según el calendario."},
          {Term::tip, "Todos los intereses que pagará durante el préstamo, como porcentaje del "
                      "monto del préstamo."},
          {Term::loan_estimate,
           "Un formulario federal con los términos y costos de un préstamo. El prestamista lo "
           "envía dentro de los tres días hábiles siguientes a la solicitud."},
          {Term::closing_disclosure,
           "Un formulario federal con los términos y costos finales. Usted lo recibe por lo menos "
           "tres días hábiles antes del cierre."},
          {Term::loan_originator, "Una persona con licencia o registrada que recibe solicitudes de "
                                  "préstamo y ofrece los términos del préstamo."}}},
};

} // namespace quoin::spanish
