// The home, area by area, in English.
#pragma once

#include "words/tour.hpp"

namespace quoin::english {

inline constexpr TourWords tour = {
    .title = "The home, area by area",
    .contract_price = "Contract price {}",
    .scenario = "{}: {} a month, {}. {}",
    .how_to_read = "Lines marked + come with your plan. The last two columns show what changes if "
                   "you add an option, or take out one you chose.",
    .price = "price",
    .a_month = "a month",
    .cash = "cash needed",
    .state = {{{TourState::included, "included"},
               {TourState::chosen, "chosen"},
               {TourState::held, "in a package"},
               {TourState::offered, "available"},
               {TourState::barred, "not available"}}},
    .agreed = "agreed",
    .in_package = "in {}",
    .included = "{} allowance included",
    .to_spend = "you plan to spend {}",
    .brings = "comes with {}",
    .before = "decide by: {}",
    .request = "special request, not in the price: {}",
    .incentives = "Incentives from the builder",
    .incentive = "{}, {}: {}",
    .towards = "{} toward {}",
    .used = "used: {}",
    .not_used = "not used; can go toward {}",
    .touch_is_difference = "What an option changes is one whole quote minus another, with each "
                           "quote rounded first.",
};

} // namespace quoin::english
