// An answer in one line, in English.
#pragma once

#include "words/brief.hpp"

namespace quoin::english {

inline constexpr BriefWords brief = {
    .a_month = "{} a month",
    .a_month_in_all = "{} a month in all",
    .more_a_month = "{} a month",
    .cash_needed = "{} cash needed",
    .more_cash = "{} cash needed",
    .against = "against {}",
    .loan = "{}: {} ({} APR), {}, {} down{}",
    .adjustable = ", adjustable after {}",
    .estimate = "estimate, {:en}",
    .sample_estimate = "estimate with sample rates, {:en}",
    .estimates = "These are estimates as of {:en}.",
    .sample_estimates = "These are estimates with sample rates, as of {:en}.",
    .priced = "{}: {}",
    .together = "your options together",
    .in_home = "{}, in your home already",
    .up_to = "up to {}",
    .no_price = "{}: no price works",
    .on_lot = "lot {}",
    .worth = "worth {}",
    .closest = "the closest home {}",
    .at_rate = "at {}: {} a month",
    .way = "{}: {} at closing, {} a month",
    .way_estimated = "{}: about {}",
};

} // namespace quoin::english
