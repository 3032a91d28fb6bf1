// What has to be known beside the figures of an answer, in Spanish.
#pragma once

#include "words/cautions.hpp"

namespace quoin::spanish {

inline constexpr CautionWords cautions = {
    .estimate =
        "Esta es una estimación al {:es}. No es una Estimación del Préstamo (Loan Estimate), ni "
        "una "
        "aprobación, ni una oferta de préstamo. Esas las da un originador de préstamos con "
        "licencia{}. Las reglas publicadas de los programas y las leyes locales deciden qué se "
        "aplica. Usted puede elegir cualquier prestamista.",
    .no_originator = " (aquí aún no se nombra a nadie)",
    .originator = " ({})",
    .rates_until_locked = "Las tasas son de {0} (licencia: {2}), tienen fecha del {1:es} y son "
                          "válidas hasta el {3:es}{4}. Una tasa se mantiene solo cuando se "
                          "bloquea.{5}",
    .rates_out_of_date = " (esa fecha ya pasó; pida tasas nuevas)",
    .sample_rates = " Son tasas de muestra, no una oferta de nadie.",
    .costs_as_known =
        "Los impuestos, los seguros, las cuotas de la asociación (HOA) y los costos de cierre usan "
        "las cifras registradas para este lugar: {}{}. Los intereses corren desde el cierre. La "
        "APR incluye "
        "los intereses prepagados y los días adicionales del primer período. Los totales a lo "
        "largo de los años mantienen los impuestos, los seguros y las cuotas en los montos de hoy.",
    .sample_place = " (cifras de muestra)",
    .rule_continued = "{}: {}. Aquí se usa la última regla vigente.",
    .lock_ends_first = "Un bloqueo de la tasa por {} días hecho ahora vence el {:es}, antes del "
                       "cierre. Después de ese día, la tasa puede cambiar.",
    .rate_adjustable =
        "Con una tasa ajustable, la APR y los totales suponen que el índice se queda donde está "
        "(comentario 17(c)(1)-10 de 12 CFR 1026). El índice cambiará, y el pago cambiará con él.",
    .extra_principal =
        "El capital adicional de {} es opcional. Se cuenta en los totales y los costos a lo largo "
        "de los años, en la cantidad de pagos y en la fecha en que termina el seguro hipotecario. "
        "No se cuenta en el pago mensual, en la APR ni en el costo del crédito que se divulga, que "
        "siguen los pagos programados (12 CFR 1026.37(l), 1026.38(o)). Los impuestos, los seguros "
        "y las cuotas se cuentan hasta el final del plazo del préstamo.",
    .extra_of = "{} al mes ({})",
    .licensed_trades =
        "* Lo marcado incluye trabajos de gas, electricidad, plomería o estructura. Esos trabajos "
        "deben cumplir el código local, necesitan un permiso y debe hacerlos un profesional con "
        "licencia, ahora o más adelante.",
    .agent_license =
        "Para el agente de ventas: usted puede explicar los precios y cómo funcionan los programas "
        "en general. Presentar las condiciones de un préstamo en particular a cambio de un "
        "beneficio puede exigir una licencia propia (12 CFR 1008.103). Anunciar un pago exige "
        "divulgar más datos (12 CFR 1026.24).",
};

} // namespace quoin::spanish
