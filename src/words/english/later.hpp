// An option now or later, in English.
#pragma once

#include "words/later.hpp"

namespace quoin::english {

inline constexpr LaterWords later = {
    .title = "Now or later",
    .named = "{}: {}",
    .item = "{} ({}): {} through the builder",
    .not_from_builder = "not available from the builder: {}",
    .after = "after closing: about {}. {}",
    .no_estimate = "after closing: the price book has no estimate",
    .cannot_be_had = "not available: {}",
    .without = "{} a month without it; {}",
    .way = {{{LaterWay::financed, "adding it to your loan"},
             {LaterWay::cash, "paying the builder in cash"},
             {LaterWay::after, "paying cash after closing"},
             {LaterWay::after_lent, "a personal loan after closing"}}},
    .at_closing = "added cash",
    .a_month = "added a month",
    .after_years = "year {}",
    .way_barred = "{} is not available: {}",
    .costs_more = "{2}, {0} costs more than {1}",
    .costs_over_the_home_without =
        "Each cost is what the home with the option has taken by the end of that year, beyond the "
        "home without it. Any added balance you still owe is in it. The cost of work after closing "
        "is an estimate from the price book, not an offer. Prices may rise, and money you keep may "
        "earn something. Neither is counted.",
    .trades_whenever = "Work on gas, wiring, plumbing or structure must follow local code. It "
                       "needs a permit and a licensed trade, whoever does it and whenever.",
};

} // namespace quoin::english
