// What is said of why something of a price book cannot be had, and of what would do where a person
// typed something else, in English.
#pragma once

#include "words/reasons.hpp"

namespace quoin::english {

inline constexpr ReasonWords reasons = {
    .either = "{} or {}",
    .why_not =
        {
            .not_on_plan = "not available on this plan",
            .only_on_elevations = "only on elevation {}",
            .only_on_lots = "only on lot {}",
            .only_on_grades = "only on {} lots",
            .lot_too_small = "needs a lot whose {} is {}{} or more",
            .past_cutoff = "too late; it had to be chosen before {}",
            .needs = "needs {}",
            .excludes = "does not go with {}",
            .one_of_kind = "only one of its kind; {} is chosen",
            .two_forms = "only one choice of the same option",
            .better_in_package = "a better choice comes in {}",
            .another_choice = "another choice of it is already selected",
            .selection_would_go = "a selection would be removed: {}",
            .outweighed = "takes the place of something worth more",
            .not_for_use = "not for this use",
            .not_for_plan = "not on this plan",
            .not_for_lot = "not on this lot",
            .contract_too_late = "only for contracts signed by {:en}",
            .closing_too_late = "only for closings by {:en}",
            .other_lender = "only with a loan from {}",
            .takes_all = "it would take the whole price",
        },
    .wanted =
        {
            .amount_above_zero = "an amount above zero, such as {}",
            .amount_not_below_zero = "an amount of zero or more, such as {}",
            .amount_in_range = "an amount from {} to {}, such as {}",
            .amount_under_price = "an amount above zero and below the price, such as {}",
            .amount_to_spend = "an amount to spend",
            .dollars_in_range = "dollars from {} to {}, with at most two decimals, such as {}",
            .dollars_a_month = "dollars a month, such as {}",
            .gross_dollars_a_month = "dollars a month before taxes, such as {}",
            .whole_number = "a whole number from {} to {}",
            .whole_months = "a whole number of months from {} to {}",
            .whole_years = "a whole number of years from {} to {}",
            .percent = "a percent from {} to {}",
            .percent_such = "a percent from {} to {}, such as {}",
            .percentage_points = "percentage points from {} to {}, such as {}",
            .yearly_percent = "a yearly rate in percent, from {} to {}, such as {}",
            .yearly_rate_above = "a yearly rate in percent, above {} to {}, such as {}",
            .day = "a date, year first, such as {}",
            .one_of = "one of {}",
            .adjustable_scenario = "a loan with an adjustable rate",
            .loan_rate_and_months = "both --loan-rate and --loan-months",
            .quantity_in_steps = "a quantity from {} to {}, in steps of {}",
            .quantity_of_the_book = "no quantity; the price book sets it",
            .name_with_ending = "a name that ends in {}",
        },
    .contradiction =
        {
            .falls_out = "{} would be removed: {}",
            .must_have = "{}, a must-have: {}",
            .cannot_stand = "{}, a must-have, cannot be chosen here",
            .cannot_stand_together = "{}, must-haves, do not go together",
            .both = "{} and {}",
            .rule = "{} ({})",
            .exclude_each_other = "{} and {} do not go together",
            .only_one_of = "only one of {} and {}",
        },
};

} // namespace quoin::english
