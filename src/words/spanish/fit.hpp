// Which wishes fit within a month and the cash, in Spanish.
#pragma once

#include "words/fit.hpp"

namespace quoin::spanish {

inline constexpr FitWords fit = {
    .title = "Qué deseos caben dentro de sus límites",
    .within = "Sus límites: {} al mes y {} de efectivo necesario, con los depósitos incluidos",
    .on_lot = "En el lote {}:",
    .named = "{}: {}",
    .how_many = "{}, {}{}",
    .must = "{}, esencial",
    .needed = "necesario",
    .in_the_home = "ya está",
    .no_wish = "ningún deseo",
    .as_chosen = "{} como está ahora",
    .rank = "orden",
    .worth = "valor",
    .price = "precio",
    .month = "al mes",
    .cash = "efectivo",
    .lot = "lote",
    .chosen = "lo elegido",
    .with = "lo que tiene esta vivienda",
    .left_out = "lo que quedó fuera: cuánto agregaría cada deseo y por qué no cupo",
    .along = "incluye también lo que necesita: {}",
    .takes_place = "reemplazaría deseos de más valor: {}",
    .loan_refused = "el préstamo no estaría disponible: {}",
    .over_month = "supera en {} su límite mensual",
    .over_cash = "supera en {} su límite de efectivo",
    .over_both = "supera en {} su límite mensual y en {} su límite de efectivo",
    .instead = "{}; en lugar de {}",
    .more_month = "suba su límite mensual en {}",
    .more_cash = "suba su límite de efectivo en {}",
    .more_of_both = "suba su límite mensual en {} y su límite de efectivo en {}",
    .next_nowhere = "Para agregar {}: {}. Ninguna combinación dentro de sus límites lo incluye.",
    .next_not_found = "Para agregar {}: {}. La búsqueda no encontró, dentro de sus límites, "
                      "ninguna combinación que lo incluya.",
    .next = "Para agregar {}: {}. O bien, sin pasar de sus límites, renuncie a {}{}. Esa "
            "combinación tiene un valor de {}{}.",
    .nothing_chosen = "nada de lo anterior",
    .gained = ", lo que deja espacio para {}",
    .next_unproven = ", lo mejor que se encontró antes de que la búsqueda se detuviera",
    .proven = "Valor {}. Comprobado: ninguna combinación dentro de sus límites tiene más valor{}. "
              "Combinaciones examinadas: {}.",
    .cheapest = ", y ninguna del mismo valor cuesta menos al mes",
    .perhaps_cheaper = "; otra del mismo valor puede costar menos",
    .best_so_far = "Valor {}: lo mejor de {} combinaciones examinadas antes de que la búsqueda se "
                   "detuviera. Ninguna tiene un valor mayor que {}{}.",
    .more_at_most = " ({} más, como máximo)",
    .worth_at_most = "valor máximo {}",
    .figures = "Precio {}, {} al mes, {} de efectivo necesario; {}",
    .incentives_lost = "Incentivos no disponibles en este lote: {}",
    .selected = "lo que ya eligió",
    .selected_and_musts = "lo que ya eligió y los deseos esenciales",
    .barred = "Lo que usted eligió no es posible en esta vivienda: {}.",
    .barred_briefly = "aquí no es posible lo que eligió",
    .nothing_fits = "nada cabe",
    .none_found = "no se encontró nada que quepa",
    .stopped_before_nearest = "Nada cabe. La búsqueda se detuvo antes de encontrar la vivienda que "
                              "más se acerca.",
    .stopped_before_any = "La búsqueda se detuvo antes de encontrar una vivienda. Aún no se sabe "
                          "si alguna cabe.",
    .loan_for_no_home = "Nada cabe. Este préstamo no está disponible para ninguna vivienda con {}.",
    .loan_not_found = "Nada cabe. La búsqueda no encontró ninguna vivienda con {} para la que este "
                      "préstamo esté disponible.",
    .nearest = "Nada cabe. La vivienda que más se acerca, con {}, {}. {}",
    .nearest_of_found = "La búsqueda se detuvo antes de encontrar una vivienda que quepa. La que "
                        "más se acerca, con {}, {}. {}",
    .nearest_unproven = "No comprobado: la búsqueda se detuvo, y otra vivienda puede acercarse "
                        "más.",
    .none_by_less = "Comprobado: ninguna vivienda se acerca más.",
    .neither_by_less = "Comprobado: ninguna vivienda se acerca más a ninguno de los dos límites.",
    .other_within_cash = "Comprobado: ninguna vivienda se acerca más al límite mensual. Otra está "
                         "dentro del límite de efectivo, pero se aleja más del límite mensual.",
    .other_over_cash = "Comprobado: ninguna vivienda se acerca más al límite mensual. Otra supera "
                       "el límite de efectivo en solo {}, pero se aleja más del límite mensual.",
    .worth_of_wishes =
        "El valor de un deseo es su peso. Un deseo sin peso vale n + 1 menos su lugar entre los n "
        "deseos según el orden; así, el primero es el que más vale. Lo que agregaría un deseo que "
        "quedó fuera es la diferencia entre dos cotizaciones completas. Sus límites se refieren al "
        "pago mensual con los impuestos completos y a todo el efectivo necesario, con los "
        "depósitos incluidos.",
};

} // namespace quoin::spanish
