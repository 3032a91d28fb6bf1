// The lots and the plans of a community, in English.
#pragma once

#include "words/site.hpp"

namespace quoin::english {

inline constexpr SiteWords site = {
    .title = "The lots and the plans",
    .figured_under = "A move is figured under {}: {}",
    .lot = "lot",
    .ground = "ground",
    .plans = "plans",
    .for_you = "for you",
    .premium = "premium",
    .every_plan = "every plan",
    .yours = "yours",
    .can_be_had = "can be had",
    .plan_does_not_fit = "your plan does not fit",
    .measured = "{} {}",
    .measured_in_feet = "{} {} ft",
    .measured_in_square_feet = "{} {} sq ft",
    .flood_zone = "{}; flood zone",
    .plan = "plan",
    .base_price = "base price",
    .size = "{} sq ft, {} bed, {} bath",
    .fits_your_lot = "fits your lot",
    .does_not_fit_your_lot = "does not fit your lot",
    .move = "{} in price, {} a month, {} cash in all",
    .no_loan = "{} in price; the loan cannot be had: {}",
    .elevation = "{}: {}",
    .falls_out = "would fall out: {} ({})",
    .survey_decides =
        "Widths and setbacks are the price book's; the survey and the permit set decide what may "
        "be built where.",
};

} // namespace quoin::english
