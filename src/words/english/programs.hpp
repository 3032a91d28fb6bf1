// The programs and rates that can be used, in English.
#pragma once

#include "words/programs.hpp"

namespace quoin::english {

inline constexpr ProgramsWords programs = {
    .title = "Loan programs and their rates",
    .ladder = "{}, {}-day rate lock: {}",
    .rung = "{} at {} points",
    .not_available = "Not available: {}.",
    .points_before_adjustments =
        "Points are a percent of the loan amount, before adjustments for credit score, "
        "loan-to-value (LTV) and loan term. Points below zero are a lender credit. An APR belongs "
        "to one loan: 'quoin compare' shows it beside each interest rate.",
};

} // namespace quoin::english
