// Which of two has cost less, when, in English.
#pragma once

#include "words/order.hpp"

namespace quoin::english {

inline constexpr OrderWords order = {
    .payments = {.throughout = "the whole time",
                 .at_closing = "at closing",
                 .from_on = "from payment {} on",
                 .through = "through payment {}",
                 .with = "at payment {}",
                 .from_to = "from payment {} through payment {}"},
    .months = {.throughout = "the whole time",
               .at_closing = "at closing",
               .from_on = "from month {} on",
               .through = "through month {}",
               .with = "in month {}",
               .from_to = "from month {} through month {}"},
    .both_same = "both cost the same {}",
    .costs_less = "{} costs less {}",
    .never_paid_back = "They never break even.",
    .nothing_more = "They cost nothing extra, at closing or later.",
    .paid_back_after = "They break even after {}.",
    .paid_back_at_times = "They are ahead only {}.",
};

} // namespace quoin::english
