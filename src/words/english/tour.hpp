// The home, area by area, in English.
#pragma once

#include "words/tour.hpp"

namespace quoin::english {

inline constexpr TourWords tour = {
    .title = "The home, area by area",
    .contract_price = "contract price {}",
    .scenario = "{}: {} a month, {}. {}",
    .how_to_read = "lines with + come with your plan; a month and cash are what taking it, or "
                   "taking it out, changes",
    .price = "price",
    .a_month = "a month",
    .cash = "cash in all",
    .state = {{{TourState::included, "included"},
               {TourState::chosen, "chosen"},
               {TourState::held, "in a package"},
               {TourState::offered, "offered"},
               {TourState::barred, "not to be had"}}},
    .agreed = "agreed",
    .in_package = "in {}",
    .included = "{} is included",
    .to_spend = "to spend: {}",
    .brings = "brings {}",
    .before = "choose before: {}",
    .request = "asked for outside the price book: {}",
    .incentives = "What the builder gives",
    .incentive = "{}, {}: {}",
    .towards = "{} towards {}",
    .used = "used: {}",
    .not_used = "not used; may go towards {}",
    .touch_is_difference =
        "What a touch adds a month is the difference of two whole quotes, rounded as they are.",
};

} // namespace quoin::english
