// What is said of a loan's terms and of lengths of time, in Spanish.
#pragma once

#include "brief.hpp"
#include "words/terms.hpp"

namespace quoin::spanish {

inline constexpr TermsWords terms = {
    .years = [](int n) { return n == 1 ? std::string("1 año") : fmt::format("{} años", n); },
    .months = [](int n) { return n == 1 ? std::string("1 mes") : fmt::format("{} meses", n); },
    .no_apr = "no disponible",
    .points = "{} puntos",
    .points_credit = "crédito del prestamista de {} puntos",
    .line = "{}: tasa de interés {}, {}, APR {}, plazo del préstamo {}, pago inicial {} ({}), LTV "
            "{}, bloqueo de la tasa por {} días{}{}",
    .extra_principal = ", {} al mes de capital adicional opcional",
    .adjustable =
        ". La tasa es fija durante {}. Después cambia cada {} meses según el índice {} "
        "({} el {:es}) más {}%. Puede cambiar {} puntos porcentuales en el primer ajuste, "
        "{} en cada ajuste posterior y {} durante la vigencia del préstamo. Nunca pasa de {}. "
        "El capital y los intereses pueden llegar a {} al mes",
    .to_bring = "{} de efectivo para el cierre",
    .back = "{} de efectivo que usted recibe en el cierre",
    .brief = brief,
};

} // namespace quoin::spanish
