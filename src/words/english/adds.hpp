// What each option adds, and what comes with an option, in English.
#pragma once

#include "words/adds.hpp"

namespace quoin::english {

inline constexpr AddsWords adds = {
    .title = "What each option adds",
    .contract_price = "Contract price now: {}",
    .loans = "The loans",
    .scenario = "{}: {} a month. {}. Rule of thumb: each $1,000 you borrow costs {} a month.",
    .price = "price",
    .alone = "Add one option to your home as it is now: the change in price and in monthly payment",
    .taking_out = "Take out one option you chose: the change in price and in monthly payment",
    .held = "Already in a package you chose",
    .barred = "Not available",
    .stacked =
        "Your options one by one, starting from none: the change in price and in monthly payment",
    .together = "all together",
    .jumps = "Why some figures jump",
    .named = "{}: {}",
    .in_package = "{}, in {}",
    .why_barred = "{}: {}",
    .added = "{} ({}), added: {}",
    .in_home = "{} ({}), in your home already: it adds {}",
    .counted_with = "counted with {}, not available without it",
    .wish = "wish {}",
    .with = "also adds {}",
    .and_with = "also takes out {}",
    .instead_of = "takes the place of {}",
    .before = "decide by: {}",
    .after_closing = "Or do it later, after closing: about {}. {}",
    .jump = "{}: {}",
    .a_month = "a month",
    .to_close = "cash to close",
    .over_five_years = "over five years",
    .over_loan = "over the whole loan",
    .alone_and_stacked =
        "Each figure is one whole quote minus another, with each quote rounded first. So an option "
        "alone and the same option after others can differ by cents. They can differ by more where "
        "a loan rule changes at a certain amount.",
};

} // namespace quoin::english
