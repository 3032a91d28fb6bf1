// Which of two has cost less, when, in Spanish.
#pragma once

#include "words/order.hpp"

namespace quoin::spanish {

inline constexpr OrderWords order = {
    .payments = {.throughout = "en todo momento",
                 .at_closing = "en el cierre",
                 .from_on = "a partir del pago {}",
                 .through = "hasta el pago {}",
                 .with = "en el pago {}",
                 .from_to = "entre el pago {} y el pago {}"},
    .months = {.throughout = "en todo momento",
               .at_closing = "en el cierre",
               .from_on = "a partir del mes {}",
               .through = "hasta el mes {}",
               .with = "en el mes {}",
               .from_to = "entre el mes {} y el mes {}"},
    .both_same = "ambos cuestan lo mismo {}",
    .costs_less = "{} cuesta menos {}",
    .never_paid_back = "Nunca llegan al punto de equilibrio.",
    .nothing_more = "No cuestan nada más, ni en el cierre ni después.",
    .paid_back_after = "Llegan al punto de equilibrio después de {}.",
    .paid_back_at_times = "Compensan su costo solo {}.",
};

} // namespace quoin::spanish
