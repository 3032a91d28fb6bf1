// Loans side by side on one home, in English.
#pragma once

#include "words/compare.hpp"

namespace quoin::english {

inline constexpr CompareWords compare = {
    .title = "Loans side by side for one home",
    .contract_price = "Contract price: {}",
    .month = "Monthly payment",
    .loan = "Loan",
    .cash = "Cash needed and cash to close",
    .years = "Over the years",
    .points = "Break-even on points",
    .points_take = "{}: points lower the rate from {} to {}. They cost {} more in cash and save {} "
                   "a month. {}",
    .orders = "Which loan costs less, and when",
    .orders_count = "Cost here means cash, loan payments and mortgage insurance so far, plus the "
                    "balance still owed.",
    .against = "{} vs. {}: {}.",
    .catches = "The catch in each program",
    .catch_of = "{}: {}",
};

} // namespace quoin::english
