// A loan month by month, in English.
#pragma once

#include "words/schedule.hpp"

namespace quoin::english {

inline constexpr ScheduleWords schedule = {
    .title = "The loan, month by month",
    .loan = "{}: loan of {}. {}",
    .saves = "{} extra principal a month: {} payments instead of {}, the last on {:en}; {} less "
             "interest{}",
    .saves_insurance = ", {} less mortgage insurance",
    .index_of_the_day = "Run as if the index stayed where it is; it will not. --worst-case and "
                        "--index show other ways.",
    .given_index = "Run along the index that was given, which nobody can know.",
    .worst_case = "Run at the worst: every change as high as the caps let it be.",
    .buydown = "The temporary buydown pays {} of the first years' payments: the buyer pays what is "
               "left of them, and the insurance.",
    .table = {.payment = "payment",
              .due = "due",
              .rate = "rate",
              .paid = "paid",
              .interest = "interest",
              .principal = "principal",
              .from_buydown = "paid by buydown",
              .balance = "balance"},
    .csv = {.payment = "payment",
            .due = "due",
            .rate = "rate",
            .paid = "paid",
            .interest = "interest",
            .principal = "principal",
            .from_buydown = "from_buydown",
            .balance = "balance"},
    .csv_insurance = "mortgage_insurance",
    .closing = "closing",
    .together = "together",
};

} // namespace quoin::english
