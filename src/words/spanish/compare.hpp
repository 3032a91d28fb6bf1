// Loans side by side on one home, in Spanish.
#pragma once

#include "words/compare.hpp"

namespace quoin::spanish {

inline constexpr CompareWords compare = {
    .title = "Préstamos lado a lado para una vivienda",
    .contract_price = "Precio del contrato: {}",
    .month = "Pago mensual",
    .loan = "Préstamo",
    .cash = "Efectivo necesario y efectivo para el cierre",
    .years = "A lo largo de los años",
    .points = "Punto de equilibrio de los puntos",
    .points_take = "{}: los puntos bajan la tasa de {} a {}. Cuestan {} más en efectivo y ahorran "
                   "{} al mes. {}",
    .orders = "Qué préstamo cuesta menos, y cuándo",
    .orders_count = "Aquí, el costo es el efectivo, los pagos del préstamo y el seguro hipotecario "
                    "hasta ese momento, más el saldo que aún se debe.",
    .against = "{} frente a {}: {}.",
    .catches = "Lo que debe tener en cuenta de cada programa",
    .catch_of = "{}: {}",
};

} // namespace quoin::spanish
