// Loans side by side on one home, in English.
#pragma once

#include "words/compare.hpp"

namespace quoin::english {

inline constexpr CompareWords compare = {
    .title = "Loans side by side on one home",
    .contract_price = "contract price {}",
    .month = "The month",
    .loan = "The loan",
    .cash = "Cash",
    .years = "The years",
    .points = "When points pay back",
    .points_take = "{}: points take {} to {}, {} more cash for {} less a month; {}",
    .orders = "Which has cost less, when: cash, payments and insurance so far and the balance owed",
    .against = "{} against {}: {}",
    .catches = "The catch in each",
    .catch_of = "{}: {}",
};

} // namespace quoin::english
