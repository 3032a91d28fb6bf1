// What the furnished model shows, in Spanish.
#pragma once

#include "words/shown.hpp"

namespace quoin::spanish {

inline constexpr ShownWords shown = {
    .title = "Lo que usted ve en la casa modelo",
    .model = "La casa modelo es el plano {}, fachada {}.",
    .model_on_lot = "La casa modelo es el plano {}, fachada {}, en el lote {}.",
    .how_to_read = "Las líneas marcadas con + vienen con su plano.",
    .for_you = "para usted",
    .as_shown = "como se muestra",
    .named = "{}: {}",
    .counted = "{}, {}",
    .standing = {{{ShownStanding::included, "incluida"},
                  {ShownStanding::free_choice, "variante sin costo"},
                  {ShownStanding::yours, "en su vivienda"},
                  {ShownStanding::yours_partly, "en su vivienda, en parte"},
                  {ShownStanding::extra, "con costo adicional"},
                  {ShownStanding::unavailable, "no disponible"},
                  {ShownStanding::decor, "decoración, no se vende"}}},
    .yours = "usted tiene: {}",
    .available = "todo lo que se muestra y está disponible para usted",
    .missing = "de eso, lo que no está en su vivienda",
    .whose_prices = "Los precios vienen de la lista de precios, para su plano. 'quoin adds' "
                    "muestra cuánto agrega cada opción al mes.",
};

} // namespace quoin::spanish
