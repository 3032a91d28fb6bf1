// What the buyer takes home, in English.
#pragma once

#include "words/sheet.hpp"

namespace quoin::english {

inline constexpr SheetWords sheet = {
    .page = "{}: {} on lot {}",
    .title = "The home, its month and its cash",
    .buyer = "for",
    .plan = "plan",
    .plan_and_style = "{}, {}",
    .floor_area = "floor area",
    .square_feet = "{} sq ft",
    .elevation = "elevation",
    .lot = "lot",
    .as_of = "as of",
    .closing = "closing",
    .price_book = "price book",
    .in_force_to = "in force to",
    .day = "{:en}",
    .home = "The home, line by line",
    .requests = "Asked for, to be confirmed; not in the price",
    .month_of_each = "The month under each loan",
    .cash = "Cash to close",
    .estimates = "Estimates as of {:en}: not a Loan Estimate, not an approval, not an offer to "
                 "lend. What they rest on is at the end.",
    .calendar = "When the cash is due",
    .costs = "Closing costs and prepaids",
    .prepaid = "prepaid: {}",
    .due = "due {:en}",
    .catches = "The catch in each program",
    .catch_of = "{}: {}",
    .rests = "What this rests on",
    .who = "Who gave this",
    .prepared_by = "Prepared by",
    .originator = "Licensed loan originator",
    .license = "License number",
    .telephone = "Telephone",
    .gone_through = "Gone through together on",
};

} // namespace quoin::english
