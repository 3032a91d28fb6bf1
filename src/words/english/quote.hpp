// What the price of a home, line by line, is told with, in English.
#pragma once

#include "words/quote.hpp"

namespace quoin::english {

inline constexpr QuoteWords quote = {
    .title = "The price of a home, and its month",
    .base_price = "{}, base price",
    .elevation = "Elevation {}",
    .lot_premium = "Lot {}, premium",
    .named = "{}: {}",
    .times = "{}{} x {}",
    .no_cost = "no cost",
    .in_package = "in a package",
    .contract_price = "Contract price",
    .requests = "Asked for outside the price book, to be confirmed; not in the price",
    .request = "{}: {}{}",
    .estimated = ", estimated at {}",
    .open_choices = "Still to choose, at no cost",
    .open_choice = "{}: {} (else {})",
    .incentives = "Incentives",
    .towards = "{} towards {}: {}",
    .use = {{{IncentiveUse::price, "price"},
             {IncentiveUse::options, "options"},
             {IncentiveUse::closing_costs, "closing costs"},
             {IncentiveUse::points, "points"},
             {IncentiveUse::buydown, "temporary buydown"}}},
    .only_with = "This incentive is given only with a loan from {}; you may choose any lender, and "
                 "then go without it.",
    .deposits = "Deposits, part of the cash needed",
    .earnest_money = "earnest money, at contract",
    .option_share = "share of options, at their selection",
    .paid_so_far = "paid so far",
    .month = "The month",
    .cash = "Cash",
};

} // namespace quoin::english
