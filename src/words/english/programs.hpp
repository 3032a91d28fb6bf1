// The programs and rates that can be used, in English.
#pragma once

#include "words/programs.hpp"

namespace quoin::english {

inline constexpr ProgramsWords programs = {
    .title = "The loan programs and the rates of the day",
    .ladder = "{}, locked {} days: {}",
    .rung = "{}% at {}",
    .not_to_be_had = "Not to be had: {}.",
    .points_before_adjustments =
        "Points are percents of the loan before adjustments for score, loan to value and term; a "
        "minus is a credit. An APR goes with a loan: 'quoin compare' shows it beside each rate.",
};

} // namespace quoin::english
