// Which of two has cost less, when, in English.
#pragma once

#include "words/order.hpp"

namespace quoin::english {

inline constexpr OrderWords order = {
    .payments = {.throughout = "throughout",
                 .at_closing = "at the closing",
                 .from_on = "from payment {} on",
                 .through = "through payment {}",
                 .with = "with payment {}",
                 .from_to = "from payment {} to {}"},
    .months = {.throughout = "throughout",
               .at_closing = "at the closing",
               .from_on = "from month {} on",
               .through = "through month {}",
               .with = "with month {}",
               .from_to = "from month {} to {}"},
    .both_same = "both cost the same {}",
    .costs_less = "{} costs less {}",
    .never_paid_back = "they never pay for themselves",
    .nothing_more = "they cost nothing more from the closing on",
    .paid_back_after = "they have paid for themselves after {}",
    .after_months =
        [](int n) { return n == 1 ? std::string("1 month") : fmt::format("{} months", n); },
    .paid_back_at_times = "they have paid for themselves {}, and at no other time",
    .and_when = "{} and {}",
};

} // namespace quoin::english
