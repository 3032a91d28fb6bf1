// What the price of a home, line by line, is told with, in English.
#pragma once

#include "words/quote.hpp"

namespace quoin::english {

inline constexpr QuoteWords quote = {
    .title = "Home price and monthly payment",
    .base_price = "{} plan, base price",
    .elevation = "Elevation {}",
    .lot_premium = "Lot {} premium",
    .named = "{}: {}",
    .times = "{}{} x {}",
    .no_cost = "no charge",
    .in_package = "in a package",
    .contract_price = "Contract price",
    .requests = "Special requests: not in the price, and the builder still has to confirm them",
    .request = "{}: {}{}",
    .estimated = ", estimated at {}",
    .open_choices = "Still to choose, at no charge",
    .open_choice = "{}: {} (if you do not choose: {})",
    .incentives = "Incentives",
    .towards = "{0}: {2} toward {1}",
    .use = {{{IncentiveUse::price, "the price"},
             {IncentiveUse::options, "options"},
             {IncentiveUse::closing_costs, "closing costs"},
             {IncentiveUse::points, "points"},
             {IncentiveUse::buydown, "a temporary buydown"}}},
    .only_with = "You get this incentive only with a loan from {}. You may choose any lender, but "
                 "with another one you give the incentive up.",
    .deposits = "Deposits (part of the cash needed)",
    .earnest_money = "earnest money, at contract",
    .option_share = "option deposit, at selection",
    .paid_so_far = "paid so far",
    .month = "Monthly payment",
    .cash = "Cash needed and cash to close",
};

} // namespace quoin::english
