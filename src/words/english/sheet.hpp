// What the buyer takes home, in English.
#pragma once

#include "words/sheet.hpp"

namespace quoin::english {

inline constexpr SheetWords sheet = {
    .page = "{}: {} plan on lot {}",
    .home = "{} plan, lot {}",
    .home_is = "{}, {} sq ft, elevation {}",
    .home_without_style = "{} sq ft, elevation {}",
    .buyer = "For {}",
    .month = "a month, with taxes and insurance",
    .month_on_land = "At first {}, while only the land is taxed",
    .month_bought_down = "In the first year {}, bought down",
    .down_payment = "down payment",
    .down = "{} ({})",
    .to_close = "cash to close",
    .to_come_back = "cash back at closing",
    .not_available = "Not available: {}",
    .estimate = "Estimate as of {:en}, with rates of {:en} from {}{}. Not a Loan Estimate, an "
                "approval or an offer to lend.",
    .sample = " (sample)",
    .in_the_home = "What is in the home",
    .plan_and_lot = "Plan and lot",
    .choice = "{} (otherwise {})",
    .requests = "Requested, not in the price, still to be confirmed",
    .incentives = "Incentives",
    .drawings = "Floor plan and lot",
    .lot = "Lot {}",
    .drawn = "Drawn to scale. The construction drawings and the survey decide.",
    .loans = "Loans side by side",
    .calendar = "When the cash is due",
    .dates = "Dates",
    .deposits = "Deposits",
    .rates_good_through = "rates good through",
    .lock_ends = "a rate lock taken now ends",
    .price_book_good_through = "prices good through",
    .closing = "closing",
    .first_payment = "first payment",
    .table_day = "{:us}",
    .notes = "Good to know",
    .catch_of = "{}: {}",
    .decides =
        "Loans come from a licensed loan originator. Program rules and local law decide. You "
        "may choose any lender.",
    .license = "Lender's license: {}.",
    .rates_hold = "A rate holds only once it is locked.",
    .rates_out_of_date = "Their last day has passed: ask for new rates.",
    .costs = "Taxes, insurance, HOA dues and closing costs are those on file for {}{}, at today's "
             "amounts.",
    .adjustable =
        "Adjustable rate: the APR assumes that the index stays where it is. It will move, "
        "and the payment with it.",
    .extra = "Extra principal of {} is optional. It is not in the monthly payment or the APR.",
    .work =
        "* Gas, electric, plumbing or structural work: it must follow local code, needs a permit "
        "and must be done by a licensed trade, now or later.",
    .prepared_by = "Prepared by",
    .originator = "Licensed loan originator",
    .license_number = "License number",
    .telephone = "Phone",
    .gone_through = "Reviewed together on",
    .foot = "Estimate as of {:en}. Not an approval or an offer to lend.",
    .of = "of",
};

} // namespace quoin::english
