// What the furnished model shows, in English.
#pragma once

#include "words/shown.hpp"

namespace quoin::english {

inline constexpr ShownWords shown = {
    .title = "What the furnished model shows",
    .model = "the model is a {}, elevation {}{}",
    .on_lot = ", on lot {}",
    .how_to_read = "lines with + come with your plan",
    .for_you = "for you",
    .as_shown = "as shown",
    .named = "{}: {}",
    .counted = "{}, {}",
    .standing = {{{ShownStanding::included, "included"},
                  {ShownStanding::free_choice, "choice at no cost"},
                  {ShownStanding::yours, "yours"},
                  {ShownStanding::yours_partly, "yours in part"},
                  {ShownStanding::extra, "extra"},
                  {ShownStanding::unavailable, "not to be had"},
                  {ShownStanding::decor, "not for sale"}}},
    .yours = "yours: {}",
    .can_be_had = "everything shown that your plan and lot can have",
    .missing = "of that, not in your home",
    .whose_prices = "Prices are those of the price book on your plan. 'quoin adds' says what each "
                    "one is a month.",
};

} // namespace quoin::english
