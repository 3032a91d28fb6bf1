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
    .at_closing = "added at closing",
    .a_month = "added a month",
    .after_years =
        [](int n) {
            return n == 1 ? std::string("cost after 1 year")
                          : fmt::format("cost after {} years", n);
        },
    .way_barred = "{} is not available: {}",
    .when_more = "When one way has cost more than another:",
    .costs_more = "{2}, {0} has cost more than {1}",
    .costs_over_the_home_without =
        "Each cost is how much more the home with the option has cost you by the end of that year "
        "than the home without it. It counts any added balance you still owe. A minus sign means "
        "the option has lowered what you pay. The cost of work after closing is an estimate from "
        "the price book, not an offer. Prices may rise, and money you keep may "
        "earn something. Neither is counted.",
    .trades_whenever = "Gas, electric, plumbing or structural work must follow local code. It "
                       "needs a permit and a licensed trade, no matter who does it or when.",
};

} // namespace quoin::english
