// A payment, an APR, without a home, in Spanish.
#pragma once

#include "words/payment.hpp"

namespace quoin::spanish {

inline constexpr PaymentWords payment = {
    .loan = "monto del préstamo",
    .note_rate = "tasa de interés",
    .term = "plazo del préstamo",
    .payment = "capital e intereses",
    .payments = "cantidad de pagos",
    .last_payment = "último pago",
    .total_interest = "total de intereses",
    .total_of_payments = "total de pagos",
    .principal_and_interest_alone =
        "Esta es una estimación del pago mensual de capital e intereses solamente. No tiene puntos "
        "ni cargos, así que la APR es igual a la tasa de interés. No es una Estimación del "
        "Préstamo "
        "(Loan Estimate), ni una aprobación, ni una oferta de préstamo. Los impuestos, los "
        "seguros, las cuotas de la asociación (HOA) y el seguro hipotecario son aparte. Solo un "
        "originador de préstamos con licencia puede hacerle una oferta.",
    .apr = "APR",
    .advanced = "monto desembolsado",
    .paid = "total pagado",
    .finance_charge = "cargo financiero",
    .actuarial_method = "Calculado con el método actuarial de 12 CFR 1026, Apéndice J, a partir de "
                        "los montos indicados. Es una estimación, no una divulgación federal.",
};

} // namespace quoin::spanish
