// What is said of a desk that a buyer takes home, in English.
#pragma once

#include "words/take_home.hpp"

namespace quoin::english {

inline constexpr TakeHomeWords take_home = {
    .went = "In the file:",
    .plan = "plan {}, elevation {}",
    .other_plans = [](int count) -> std::string {
        return count == 1 ? "1 other plan by name, size and price"
                          : fmt::format("{} other plans by name, size and price", count);
    },
    .part = {{{TakenPart::options, "options"},
              {TakenPart::incentives, "incentives"},
              {TakenPart::lots, "lots"},
              {TakenPart::programs, "loan programs"},
              {TakenPart::rates, "rates"}}},
    .counted = "{}: {} of {}",
    .pictures = "pictures: {}, {} kB",
    .all_rates = "rate sheet {}: all rates for the programs, terms and locks of these loans",
    .own_rates = "rate sheet {}: only the rows these loans use. It does not say that it may be "
                 "shared.",
    .of_buyer = {{{Private::score, "credit score"},
                  {Private::income, "income and household"},
                  {Private::debts, "debts"},
                  {Private::cash, "cash"}}},
    .in_file = "{}, as you asked",
    .left_out = "Left out:",
    .least_score = "credit score: the file says {}, the least with the same figures",
    .least_of = "credit score of \"{}\": the file says {}, the least with the same figures",
    .down_as_amount = "cash: the down payment of \"{}\" is now the amount it came to",
    .loan_at_home = "cash: \"{}\" is left out, because it rests on the cash alone",
    .wish = "wish {}: only other plans have it",
    .no_picture = "picture {}: all pictures together may have {} kB",
    .for_the_desk = "all notes for the desk, comments and who prepared it",
    .written = [](std::string_view where, int files, int kb) -> std::string {
        return files == 1 ? fmt::format("{}: written, {} kB. Only you can read it.", where, kb)
                          : fmt::format("{}: written, {} files, {} kB. Only you can read them.",
                                        where, files, kb);
    },
};

} // namespace quoin::english
