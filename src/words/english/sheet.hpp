// What the buyer takes home, in English.
#pragma once

#include "words/sheet.hpp"

namespace quoin::english {

inline constexpr SheetWords sheet = {
    .page = "{}: {} plan on lot {}",
    .title = "Your home: price, monthly payment and cash",
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
    .in_force_to = "good through",
    .day = "{:en}",
    .table_day = "{:us}",
    .home = "The home, line by line",
    .requests = "Special requests: not in the price, still to be confirmed",
    .month_of_each = "Monthly payment with each loan",
    .cash = "Cash needed and cash to close",
    .estimates = "Estimates as of {:en}. They are not a Loan Estimate, an approval or an offer to "
                 "lend. What they are based on is at the end.",
    .calendar = "When the cash is due",
    .costs = "Closing costs and prepaids",
    .prepaid = "prepaid: {}",
    .due = "due {:us}",
    .catches = "The catch in each program",
    .catch_of = "{}: {}",
    .rests = "What these figures are based on",
    .who = "Who gave you this",
    .prepared_by = "Prepared by",
    .originator = "Licensed loan originator",
    .license = "License number",
    .telephone = "Phone",
    .gone_through = "Reviewed together on",
};

} // namespace quoin::english
