// What income, debts and cash allow, in Spanish.
#pragma once

#include "words/afford.hpp"

namespace quoin::spanish {

inline constexpr AffordWords afford = {
    .title = "El precio más alto a su alcance",
    .dates = "Con fecha del {:es}; cierre el {:es}",
    .assumed = "Supuestos: {}.",
    .reserve =
        [](int n) {
            return n == 1
                       ? std::string(
                             "1 pago mensual guardado como reserva, además del efectivo necesario")
                       : fmt::format("{} pagos mensuales guardados como reservas, además del "
                                     "efectivo necesario",
                                     n);
        },
    .front_ratio = "relación vivienda-ingreso del {}",
    .back_ratio = "relación deuda-ingreso del {}",
    .by_residual_income = "DTI con ingreso residual del {}",
    .residual_income = "ingreso residual",
    .cash = "su efectivo",
    .program = "los límites propios del préstamo",
    .takes = "necesario",
    .most = "límite",
    .left = "queda",
    .short_by = "falta",
    .up_to = "hasta {}{}: {} al mes, {} de efectivo necesario",
    .held_to_no_ratio = " (sin aplicar una relación de ingresos)",
    .binds = "Lo que limita el precio: {}{}.{}",
    .binds_since = " ({})",
    .without = " Sin eso, podría llegar hasta {}{}.",
    .where_binds = " (siguiente límite: {})",
    .qualifying = "Esta tasa puede subir; por eso las relaciones usan un pago con una tasa del {}. "
                  "Fuente: {}.",
    .whole_percents = "Cada relación se redondea a un porcentaje entero antes de compararla con "
                      "el límite.",
    .refused = "Ningún precio es posible con este préstamo. Con un precio de {}: {}.",
    .nearest = "Ningún precio es posible con este préstamo. El precio más bajo que se probó es {}:",
    .automated_the_same = "La evaluación automatizada no cambia nada aquí. Este programa usa el {} "
                          "como guía para la relación deuda-ingreso, sin importar cómo se evalúe "
                          "el préstamo.",
    .automated_none_published =
        "Este programa no publica ninguna relación para los préstamos que acepta su evaluación "
        "automatizada; por eso aquí no se aplica ninguna. Nadie sabe qué acepta hasta que un "
        "prestamista la consulte. Un préstamo que pasa a evaluación manual debe cumplir con las "
        "relaciones de esa evaluación.",
    .automated_not_known = "La evaluación automatizada no cambia nada aquí: para este programa no "
                           "se conoce una relación propia de esa evaluación.",
    .passed = "La relación deuda-ingreso es mayor que el {}. Aquí se acepta porque a usted le "
              "quedaría al menos el {} del ingreso residual que indica la guía del programa. El "
              "prestamista debe justificarlo en el expediente, y es quien decide.",
    .residual_tested = "Ingreso residual: deben quedar {} para vivir después de los impuestos, las "
                       "deudas, el pago mensual y {} de mantenimiento y servicios públicos ({} "
                       "pies cuadrados).",
    .residual_lacks = "Este programa también considera el ingreso residual. Aquí no se calcula. "
                      "Faltan estos datos: {}.",
    .lacks_income = "ingresos",
    .lacks_taxes = "impuestos sobre los ingresos (\"income_taxes\")",
    .lacks_household = "número de personas en el hogar",
    .lacks_region = "región del lugar",
    .lacks_square_feet = "pies cuadrados del plano",
    .step_refused = "Para una vivienda de {}, este préstamo no está disponible: {}.",
    .step = "Para una vivienda de {}, usted necesitaría {}.{}",
    .and_also = "{}, y además {}",
    .more_cash = "{} más de efectivo",
    .more_income = "{} más de ingresos al mes",
    .more_income_or_less_debts = "{} más de ingresos al mes o {} menos de deudas al mes",
    .more_after_tax = "{} más al mes después de impuestos",
    .more_after_tax_or_less_debts = "{} más al mes después de impuestos o {} menos de deudas al "
                                    "mes",
    .lower_rate =
        " O bien, con una tasa de interés del {} y {} puntos, no necesitaría nada de eso.",
    .no_plan = "Ninguna vivienda de la lista de precios está dentro de este precio.",
    .plan = "plano {}: {}, desde {} sin opciones ({}, lote {})",
    .pairs =
        [](int n) {
            return n == 1 ? std::string("1 combinación disponible de fachada y lote")
                          : fmt::format("{} combinaciones disponibles de fachada y lote", n);
        },
    .ratios_are_guides =
        "Las relaciones son guías de las reglas publicadas, no una aprobación. La relación "
        "vivienda-ingreso es el pago mensual dividido entre el ingreso bruto mensual. La relación "
        "deuda-ingreso (DTI) suma a ese pago las deudas mensuales. El prestamista examina el "
        "crédito, los ingresos y los bienes, y puede aceptar más o menos que estas relaciones. "
        "Cuánto puede pedir prestado y cuánto le conviene son dos preguntas distintas. Una "
        "reducción temporal de la tasa (buydown) baja los primeros pagos, pero no sube el precio a "
        "su alcance: los préstamos se evalúan con la tasa del pagaré.",
};

} // namespace quoin::spanish
