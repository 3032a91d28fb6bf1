// What the program says around its answers, in Spanish.
#pragma once

#include "take_home.hpp"
#include "words/apps.hpp"

namespace quoin::spanish {

inline constexpr AppsWords apps = {
    .plain =
        {
            .buyer = "el comprador",
            .place = "las cifras indicadas",
            .property_taxes = "Impuestos sobre la propiedad",
            .dues = "Cuotas de la asociación (HOA)",
            .closing_costs = "Costos de cierre",
            .loan = "{}, pago inicial del {}%",
            .loan_nothing_down = "{}, sin pago inicial",
            .assumed_property_taxes = "impuestos sobre la propiedad del {}% del precio al año",
            .assumed_tax_days =
                "impuestos sobre la propiedad en dos mitades, el 31 de mayo y el 30 de noviembre",
            .assumed_insurance = "seguro de vivienda del {}% del precio al año",
            .assumed_closing_costs = "costos de cierre del {}% del préstamo, ninguno de ellos en "
                                     "la APR",
            .assumed_factors = "seguro hipotecario con las tasas de {}, si el programa lo pide",
            .assumed_sample_factors = "seguro hipotecario con las tasas de {} (cifras de "
                                      "muestra), si el programa lo pide",
            .assumed_cash = "todo el efectivo que la vivienda necesite (sin --cash)",
            .assumed_score = "un puntaje de crédito de {}",
        },
    .checking =
        {
            .kind = {{{FileKind::unknown, "archivo"},
                      {FileKind::price_book, "lista de precios"},
                      {FileKind::inquiry, "consulta"},
                      {FileKind::program, "programa de préstamos"},
                      {FileKind::rate_sheet, "hoja de tasas"},
                      {FileKind::place, "lugar"},
                      {FileKind::apr_problem, "problema de APR"},
                      {FileKind::drawing, "dibujo de un plano"},
                      {FileKind::site_map, "mapa de lotes"}}},
            .sound = "{}: {}, sin problemas",
            .ending = "{}: {}{}, vigente hasta el {:es}. {}",
            .named = " \"{}\"",
            .after = {{{After::unknown, "Después de ese día se rechaza todo préstamo que necesite "
                                        "esa regla, hasta que los datos incluyan la siguiente."},
                       {After::continues, "Después de ese día se sigue usando esa regla, y cada "
                                          "respuesta lo dice, hasta que los datos incluyan la "
                                          "siguiente."},
                       {After::ends, "Después de ese día ya no existe esa regla."}}},
        },
    .search =
        {
            .progress = "{} examinadas, {}: lote {}, {}",
            .best = "mejor valor {}, máximo {}",
            .none_yet = "ninguna aún, máximo {}",
            .cheapest = "la más barata de valor {}",
            .another_wish = "con otro deseo",
            .closest = "nada cabe, la vivienda que más se acerca",
            .stopped = "la búsqueda se detuvo. Donde no terminó, se muestra lo mejor hasta ahora\n"
                       "  y el valor máximo que podría tener cualquier otra combinación",
        },
    .first =
        {
            .prices_ended = "Estos precios vencieron el {:es}: pida los actuales. {}",
            .prices_coming = "Estos precios valen a partir del {:es}. {}",
            .assumed = "Una vivienda sin nada elegido todavía. Se supone un puntaje de crédito de "
                       "{} y un cierre dentro de {} días.",
        },
    .serve =
        {
            .serves = "quoin ofrece listas de precios ({}) y consultas ({})",
            .address_is_open =
                "Quien tenga esta dirección puede usarla. La conexión no está cifrada.",
            .no_page = "Esta versión no tiene página, solo las preguntas.",
            .no_browser = "No se encontró ningún navegador. Abra usted la dirección.",
            .how_to_end = "Presione Ctrl-C para terminar.",
            .left_out = "se dejó fuera lo que tiene problemas; se ofrece lo demás",
            .ended = "quoin serve ha terminado",
            .faults = "Respuestas que fallaron por un error del programa: {}. No se guardó nada de "
                      "ellas.",
        },
    .end =
        {
            .stopped = "se detuvo antes de tener una respuesta",
            .too_large = "las cifras son demasiado grandes para calcular: {}",
            .fault = "esta es una falla del programa, no de sus datos: {}",
            .no_memory = "no hay suficiente memoria",
            .untold = "no se sabe más al respecto",
        },
    .take_home = take_home,
    .written = "{}: guardado. Solo usted puede leer este archivo.",
};

} // namespace quoin::spanish
