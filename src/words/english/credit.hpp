// What a builder's money can do, in English.
#pragma once

#include "words/credit.hpp"

namespace quoin::english {

inline constexpr CreditWords credit = {
    .title = "What {} from the builder can do",
    .contract_price = "Contract price without it: {}",
    .without_it_month = "{}: {} a month without it. {}",
    .cap_of_price = "The seller and other interested parties may contribute up to {0} of the "
                    "price, or {1}.{3}{2}",
    .cap_of_value = "The seller and other interested parties may contribute up to {0} of the "
                    "home's value, or {1}.{3}{2}",
    .cap_on_concessions = " Only prepaids, buydowns and the funding fee count toward that limit.",
    .cap_taken = " {} of that is already used.",
    .way = {{{CreditWay::off_price, "off the price"},
             {CreditWay::costs, "closing costs and prepaids"},
             {CreditWay::points, "points"},
             {CreditWay::buydown_1_0, "1-0 temporary buydown"},
             {CreditWay::buydown_2_1, "2-1 temporary buydown"},
             {CreditWay::buydown_3_2_1, "3-2-1 temporary buydown"},
             {CreditWay::upfront_fee, "upfront fee or single premium"}}},
    .in_cash = "{}, in cash",
    .with_points = "{}: {}",
    .not_to_be_had = "{}: {}",
    .takes = "needs {}",
    .takes_more_than_cap = "needs {}, more than the limit on contributions leaves",
    .no_lower_rate = "no lower rate is available",
    .not_with_this_loan = "not with this loan",
    .without_it = "without it",
    .each_use = "all of it put to one use",
    .note_rate = "interest rate",
    .apr = "APR",
    .month_now = "a month now",
    .after_three_years = "after three years",
    .cash_needed = "cash needed",
    .no_use_for = "not used",
    .costs_after = "cost, with what is still owed, after",
    .off_price = "off the price",
    .buydown = "buydown",
    .fee = "fee",
    .pays = "to points and costs",
    .cost_over = "cost over {}",
    .no_apr = "none",
    .no_buydown = "none",
    .fee_in_cash = "in cash",
    .whole_loan = "the whole loan",
    .bests = "The best mix for each goal",
    .lowest_payment = "lowest payment now",
    .least_cash = "least cash",
    .least_cash_is_given =
        "least cash: the down payment takes all the cash you have, whatever the mix",
    .least_cost = "lowest cost over {}",
    .best = "{0}: {1}{2}. Interest rate {3}, APR {4}. {5} a month now, {6} a month after three "
            "years. Cash needed: {7}. Cost over {9}: {8}.",
    .pays_nothing = "the money is not used",
    .goes_off_price = "{} off the price",
    .goes_to_points = "{} to points ({} with {} points)",
    .goes_to_buydown = "{} to a {} buydown",
    .goes_to_upfront = "{} to {}",
    .goes_to_costs = "{} to closing costs",
    .goes_to_prepaids = "{} to prepaids",
    .lost_without_use = "; {} is not used",
    .lost_over_cap = "; {} is over the limit on contributions",
    .frontier = "Mixes that no other mix beats on payment, cash and cost all at once{}",
    .thinned = " ({} of {} shown, evenly spaced)",
    .money_on_top =
        "This money comes on top of any incentives and credits already counted here. The limit "
        "on contributions covers all of them together. The money pays points first, then the "
        "buydown, closing costs, prepaids, and an upfront fee or premium in cash. It never pays "
        "the down payment. In no mix do you pay more of your own money for costs and points than "
        "without it. Money credited toward options lowers the price, and counts here as money off "
        "the price.",
    .cost_spent_and_owed =
        "Cost is what you have spent plus what you still owe: cash, payments minus the part a "
        "buydown pays, insurance, taxes, dues and the loan balance. Monthly payments, now and "
        "after three years, count full taxes, after the home is assessed. Money off the price "
        "comes in whole dollars. Between the amounts shown, the figures change evenly.",
    .money_with_conditions =
        "If the money depends on a lender, a title company or a date, its conditions say so. You "
        "may choose any lender, and may then have to go without the money. Compare the whole cost.",
    .paid_in_cash =
        "An upfront fee paid in cash is not borrowed, so you pay no interest on it. A single "
        "premium takes "
        "the place of monthly mortgage insurance. Its certificate says whether any of it comes "
        "back if the loan ends early.",
};

} // namespace quoin::english
