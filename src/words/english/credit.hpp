// What a builder's money can do, in English.
#pragma once

#include "words/credit.hpp"

namespace quoin::english {

inline constexpr CreditWords credit = {
    .title = "What {} from the builder can do",
    .contract_price = "contract price without it {}",
    .without_it_month = "{}: {} a month without it. {}",
    .cap_of_price = "Interested parties may give {} of the price, {}{}{}.",
    .cap_of_value = "Interested parties may give {} of the value, {}{}{}.",
    .cap_on_concessions = ", prepaids, buydowns and the funding fee alone counted",
    .cap_taken = "; {} of it is taken already",
    .way = {{{CreditWay::off_price, "off the price"},
             {CreditWay::costs, "closing costs and prepaids"},
             {CreditWay::points, "points"},
             {CreditWay::buydown_1_0, "temporary buydown 1-0"},
             {CreditWay::buydown_2_1, "temporary buydown 2-1"},
             {CreditWay::buydown_3_2_1, "temporary buydown 3-2-1"},
             {CreditWay::upfront_fee, "upfront fee or single premium"}}},
    .in_cash = "{}, in cash",
    .with_points = "{}: {} points",
    .not_to_be_had = "{}: {}",
    .takes = "takes {}",
    .takes_more_than_cap = "takes {}, more than the cap leaves",
    .no_lower_rate = "no lower rate to be had",
    .not_with_this_loan = "not with this loan",
    .without_it = "without it",
    .each_use = "each use by itself",
    .note_rate = "note rate",
    .apr = "APR",
    .month_now = "a month now",
    .after_three_years = "after three years",
    .cash_needed = "cash needed",
    .no_use_for = "no use for",
    .costs_after = "what it costs, with what is owed, after",
    .off_price = "off the price",
    .buydown = "buydown",
    .fee = "fee",
    .pays = "pays of points and costs",
    .cost_over = "cost over {}",
    .no_apr = "none",
    .no_buydown = "none",
    .fee_in_cash = "in cash",
    .whole_loan = "the whole loan",
    .bests = "The best of every mix",
    .lowest_payment = "lowest payment now",
    .least_cash = "least cash",
    .least_cash_is_given =
        "least cash: the down payment takes all the cash there is, whatever the mix",
    .least_cost = "least cost over {}",
    .best = "{}: {}{}. Note rate {}, APR {}: {} a month now, {} after three years, {} cash, {} "
            "over {}.",
    .pays_nothing = "no use at all",
    .goes_off_price = "{} off the price",
    .goes_to_points = "{} to points ({} at {} points)",
    .goes_to_buydown = "{} to a {} buydown",
    .goes_to_upfront = "{} to {}",
    .goes_to_costs = "{} to closing costs",
    .goes_to_prepaids = "{} to prepaids",
    .lost_without_use = "; {} finds nothing left to pay",
    .lost_over_cap = "; {} is over the cap",
    .frontier = "Mixes that no other beats in month, cash and cost at once{}",
    .thinned = " ({} of {}, evenly)",
    .money_on_top =
        "The money comes on top of the incentives and credits that the inquiry uses already, and "
        "the cap is on all of them together. It pays points first, then the buydown, closing "
        "costs, prepaids, a fee or premium in cash; never a down payment. In no mix does the "
        "buyer put more of their own into costs and points than without it. Money that options "
        "are credited with makes the price less and is reckoned as off the price.",
    .cost_spent_and_owed =
        "Cost is what has been spent and is still owed: cash, payments less what a buydown "
        "pays of them, insurance, taxes, dues, and the balance. The month is the settled one, "
        "now and after three years. Money off the price comes in whole dollars; between the "
        "amounts told the figures run evenly.",
    .money_with_conditions =
        "Where such money depends on a lender, a title company or a date, its conditions say so. "
        "You may choose any lender, and then may have to go without it: compare the whole cost.",
    .paid_in_cash = "An upfront fee in cash is not borrowed, and so bears no interest. A single "
                    "premium takes the place of the month's insurance: whether any of it comes "
                    "back when the loan ends early is in its certificate.",
};

} // namespace quoin::english
