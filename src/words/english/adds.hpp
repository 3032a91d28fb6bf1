// What each option adds, and what comes with an option, in English.
#pragma once

#include "words/adds.hpp"

namespace quoin::english {

inline constexpr AddsWords adds = {
    .title = "What each option adds",
    .contract_price = "contract price as it stands {}",
    .ways_to_pay = "The ways to pay",
    .scenario = "{}: {} a month. {}. Rule of thumb: {} a month for each $1,000 of loan",
    .price = "price",
    .alone = "Each one alone, added to the home as it stands: a month",
    .taking_out = "Already chosen; taking one out: a month",
    .held = "Comes with a package that is chosen",
    .barred = "Not to be had here",
    .stacked = "Stacked in the buyer's order, from the home without options: a month",
    .together = "together",
    .jumps = "Where a figure jumps",
    .named = "{}: {}",
    .in_package = "{}: in {}",
    .why_barred = "{}: {}",
    .added = "{} ({}), {}, added",
    .taken_out = "{} ({}), {}, taken out",
    .wish = "wish {}",
    .with = "with {}",
    .and_with = "and with it {}",
    .instead_of = "instead of {}",
    .before = "to be chosen before: {}",
    .after_closing = "after closing instead: about {}. {}",
    .jump = "{}: {}",
    .a_month = "a month",
    .to_bring = "left to bring at closing",
    .over_five_years = "over five years",
    .over_loan = "over the whole loan",
    .alone_and_stacked =
        "Each figure is the difference of two whole quotes, rounded as they are; what an option "
        "adds alone and what it adds stacked can differ by cents, and where a rule's line is "
        "crossed by more.",
};

} // namespace quoin::english
