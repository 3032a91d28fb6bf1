// The lots and the plans of a community, in English.
#pragma once

#include "words/site.hpp"

namespace quoin::english {

inline constexpr SiteWords site = {
    .title = "Lots and plans",
    .figured_under = "Each change below is figured with {}: {}",
    .lot = "lot",
    .ground = "ground",
    .plans = "plans",
    .for_you = "for you",
    .premium = "premium",
    .every_plan = "every plan",
    .yours = "yours",
    .plan_fits = "your plan fits",
    .plan_does_not_fit = "your plan does not fit",
    .measured = "{} {}{}",
    .flood_zone = "in a flood zone",
    .plan = "plan",
    .base_price = "base price",
    .size = "{} sq ft, {} bed, {} bath",
    .fits_your_lot = "fits your lot",
    .does_not_fit_your_lot = "does not fit your lot",
    .move = "{} in price, {} a month, {} in cash needed",
    .no_loan = "{} in price; this loan is not available: {}",
    .elevation = "{}: {}",
    .falls_out = "would be removed: {} ({})",
    .map = "Map of the lots",
    .map_lot = "Lot {}, {}",
    .your_lot = "your lot",
    .too_small = "too small",
    .north = "N",
    .scale = "{} ft",
    .survey_decides =
        "Lot widths and setbacks come from the price book. The survey and the permit drawings "
        "decide what can be built where.",
};

} // namespace quoin::english
