// A loan month by month, in English.
#pragma once

#include "words/schedule.hpp"

namespace quoin::english {

inline constexpr ScheduleWords schedule = {
    .title = "Payment schedule, month by month",
    .loan = "{}: loan amount {}. {}",
    .saves = "With {} a month in extra principal, the loan takes {} payments instead of {}. The "
             "last one is due {:en}. This saves {} in interest{}.",
    .saves_insurance = " and {} in mortgage insurance",
    .index_of_the_day = "This assumes that the index stays where it is today. It will not. To see "
                        "other paths, use --worst-case or --index.",
    .given_index = "This follows the index path that was given. Nobody can know the real one.",
    .worst_case = "This is the worst case: every change is as large as the caps allow.",
    .buydown = "The temporary buydown pays {} of the payments in the first years. The buyer pays "
               "the rest, and the mortgage insurance.",
    .table = {.payment = "payment",
              .due = "due",
              .rate = "rate",
              .paid = "paid",
              .interest = "interest",
              .principal = "principal",
              .from_buydown = "paid by buydown",
              .balance = "balance"},
    .closing = "closing",
    .together = "total",
};

} // namespace quoin::english
