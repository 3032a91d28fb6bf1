// What the furnished model shows, in English.
#pragma once

#include "words/shown.hpp"

namespace quoin::english {

inline constexpr ShownWords shown = {
    .title = "What you see in the model home",
    .model = "The model home is the {} plan, elevation {}.",
    .model_on_lot = "The model home is the {} plan, elevation {}, on lot {}.",
    .how_to_read = "Lines marked + come with your plan.",
    .for_you = "for you",
    .as_shown = "as shown",
    .named = "{}: {}",
    .counted = "{}, {}",
    .standing = {{{ShownStanding::included, "included"},
                  {ShownStanding::free_choice, "no-cost choice"},
                  {ShownStanding::yours, "yours"},
                  {ShownStanding::yours_partly, "yours in part"},
                  {ShownStanding::extra, "costs extra"},
                  {ShownStanding::unavailable, "not available"},
                  {ShownStanding::decor, "decor, not for sale"}}},
    .yours = "yours: {}",
    .available = "everything shown that is available to you",
    .missing = "of that, not in your home",
    .whose_prices = "Prices come from the price book, for your plan. 'quoin adds' shows what each "
                    "option adds a month.",
};

} // namespace quoin::english
