// An option now or later, in English.
#pragma once

#include "words/later.hpp"

namespace quoin::english {

inline constexpr LaterWords later = {
    .title = "Now or later",
    .named = "{}: {}",
    .item = "{} ({}), {} from the builder",
    .not_from_builder = "not to be had from the builder here: {}",
    .after = "after closing: about {}. {}",
    .no_estimate = "after closing: the price book has no estimate",
    .cannot_be_had = "cannot be had: {}",
    .without = "{} a month without it; {}",
    .way = {{{LaterWay::financed, "from the builder, financed"},
             {LaterWay::cash, "from the builder, in cash"},
             {LaterWay::after, "after closing, in cash"},
             {LaterWay::after_lent, "after closing, on a personal loan"}}},
    .at_closing = "at closing",
    .a_month = "a month",
    .after_years = "{} y",
    .way_barred = "{}: {}",
    .costs_more = "{} has cost more than {} {}",
    .costs_over_the_home_without =
        "Costs through a year are what the home with it has taken over the home without it, and "
        "what is owed more. What is done after the closing is an estimate of the price book, not "
        "an offer; prices rise, and money kept earns something: neither is counted.",
    .trades_whenever = "Work on gas, wiring, plumbing or structure follows local code, needs a "
                       "permit and a licensed trade, whoever does it and whenever.",
};

} // namespace quoin::english
