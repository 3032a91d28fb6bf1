// What is said of why something of a price book cannot be had, and of what would do where a person
// typed something else, in Spanish.
#pragma once

#include "words/reasons.hpp"

namespace quoin::spanish {

/// "roble o pino", "pino u olmo", "7 u 8": "o" changes before its own sound.
inline std::string either_of(Text row, Text last) {
    constexpr Text sounds[] = {"o", "O", "ó", "Ó", "ho", "Ho", "HO", "hó", "Hó", "8"};
    bool same = last == "11" || last.starts_with("11 ");
    for (const Text sound : sounds) same = same || last.starts_with(sound);
    return fmt::format("{} {} {}", row, same ? "u" : "o", last);
}

/// "roble y pino", "pino e iroko", "roble y hierro": "y" changes before its own sound.
inline std::string both_of(Text row, Text last) {
    constexpr Text sounds[] = {"i", "I", "í", "Í", "hi", "Hi", "HI", "hí", "Hí"};
    constexpr Text others[] = {"hie", "Hie", "HIE", "hia", "Hia", "HIA", "hio", "Hio", "HIO"};
    bool same = false;
    for (const Text sound : sounds) same = same || last.starts_with(sound);
    for (const Text sound : others) same = same && !last.starts_with(sound);
    return fmt::format("{} {} {}", row, same ? "e" : "y", last);
}

inline constexpr ReasonWords reasons = {
    .either = either_of,
    .why_not =
        {
            .not_on_plan = "no disponible en este plano",
            .only_on_elevations = "solo en la fachada {}",
            .only_on_lots = "solo en el lote {}",
            .only_on_grades = "solo en lotes de este tipo: {}",
            .lot_too_small = "necesita un lote con {} de {}{} o más",
            .past_cutoff = "demasiado tarde; había que decidir antes de esta etapa: {}",
            .needs = "necesita {}",
            .excludes = "no es compatible con {}",
            .one_of_kind = "solo se permite una opción de este tipo; ya se eligió {}",
            .two_forms = "solo se permite una variante de la misma opción",
            .better_in_package = "una variante mejor viene con {}",
            .another_choice = "ya se eligió otra variante de la misma opción",
            .selection_would_go = "se quitaría una selección: {}",
            .outweighed = "ocupa el lugar de algo que vale más para usted",
            .not_for_use = "no se permite para este uso",
            .not_for_plan = "no se aplica a este plano",
            .not_for_lot = "no se aplica a este lote",
            .contract_too_late = "solo para contratos firmados hasta el {:es}",
            .closing_too_late = "solo para cierres hasta el {:es}",
            .other_lender = "solo con un préstamo de {}",
            .takes_all = "no dejaría nada del precio",
        },
    .wanted =
        {
            .amount_above_zero = "un monto mayor que cero, por ejemplo {}",
            .amount_not_below_zero = "un monto de cero o más, por ejemplo {}",
            .amount_in_range = "un monto de {} a {}, por ejemplo {}",
            .amount_under_price = "un monto mayor que cero y menor que el precio, por ejemplo {}",
            .amount_to_spend = "un monto para gastar",
            .dollars_in_range = "dólares de {} a {}, con dos decimales como máximo, por ejemplo {}",
            .dollars_a_month = "dólares al mes, por ejemplo {}",
            .gross_dollars_a_month = "dólares al mes antes de impuestos, por ejemplo {}",
            .whole_number = "un número entero de {} a {}",
            .whole_months = "un número entero de meses, de {} a {}",
            .whole_years = "un número entero de años, de {} a {}",
            .percent = "un porcentaje de {} a {}",
            .percent_such = "un porcentaje de {} a {}, por ejemplo {}",
            .percentage_points = "puntos porcentuales de {} a {}, por ejemplo {}",
            .yearly_percent = "una tasa anual en porcentaje, de {} a {}, por ejemplo {}",
            .yearly_rate_above =
                "una tasa anual en porcentaje, mayor que {} y hasta {}, por ejemplo {}",
            .day = "una fecha, primero el año, por ejemplo {}",
            .one_of = "uno de estos: {}",
            .adjustable_scenario = "un préstamo con tasa ajustable",
            .loan_rate_and_months = "--loan-rate junto con --loan-months",
            .quantity_in_steps = "una cantidad de {} a {}, en pasos de {}",
            .quantity_of_the_book = "ninguna cantidad; la fija la lista de precios",
            .name_with_ending = "un nombre que termine en {}",
        },
    .contradiction =
        {
            .falls_out = "se quitaría: {} ({})",
            .must_have = "{}, esencial: {}",
            .cannot_stand = "{}, esencial, no se puede elegir aquí",
            .cannot_stand_together = "{}, esenciales, no son compatibles",
            .both = both_of,
            .rule = "{} ({})",
            .exclude_each_other = "{} no es compatible con {}",
            .only_one_of = "solo se permite una de estas: {}, {}",
        },
};

} // namespace quoin::spanish
