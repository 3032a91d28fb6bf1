// A loan month by month, in Spanish.
#pragma once

#include "words/schedule.hpp"

namespace quoin::spanish {

inline constexpr ScheduleWords schedule = {
    .title = "Calendario de pagos, mes a mes",
    .loan = "{}: monto del préstamo {}. {}",
    .saves = "Con {} al mes de capital adicional, el préstamo se termina de pagar en {} pagos en "
             "lugar de "
             "{}. El último vence el {:es}. Así se ahorran {} de intereses{}.",
    .saves_insurance = " y {} de seguro hipotecario",
    .index_of_the_day = "Esto supone que el índice se queda donde está hoy. No será así. Para ver "
                        "otros casos, use --worst-case o --index.",
    .given_index = "Esto sigue el índice que se indicó. Nadie puede conocer el índice real.",
    .worst_case = "Este es el peor caso: cada cambio es tan grande como lo permiten los límites.",
    .buydown = "La reducción temporal de la tasa (buydown) paga {} de los pagos de los primeros "
               "años. Usted paga el resto y el seguro hipotecario.",
    .table = {.payment = "pago",
              .due = "vence",
              .rate = "tasa",
              .paid = "pagado",
              .interest = "intereses",
              .principal = "capital",
              .from_buydown = "lo paga el buydown",
              .balance = "saldo"},
    .closing = "cierre",
    .together = "total",
};

} // namespace quoin::spanish
