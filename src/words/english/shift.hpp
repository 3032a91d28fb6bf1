// What can move before the closing, in English.
#pragma once

#include "words/shift.hpp"

namespace quoin::english {

inline constexpr ShiftWords shift = {
    .title = "What can change before closing",
    .contract_price = "Contract price as quoted {}",
    .scenario = "{}: {} a month, {} cash needed. {}",
    .as_quoted = "as quoted",
    .price = "price {}%",
    .options = "options {}",
    .appraisal = "appraisal {}%",
    .month_at = "monthly payment at",
    .cash_at = "cash needed at",
    .not_available = "not available",
    .refused = "{}: {}",
    .lock_costs = "What each rate lock costs at {} (* your lock)",
    .lock = "rate lock",
    .lock_days = "{} days",
    .lock_ends = "if locked now, ends",
    .lock_ends_on = "{:us}",
    .ends_before_closing = "before closing",
    .lock_points = "points at today's rate",
    .no_such_rate = "rate not offered",
    .lock_cash = "change in cash needed",
    .if_income_changes = "If the income changes: the housing ratio, the DTI and the highest rate "
                         "within the limits",
    .income = "income",
    .income_now = "now",
    .month = "a month",
    .housing = "housing ratio",
    .with_debts = "DTI",
    .within = "within limits",
    .yes = "yes",
    .no = "no",
    .up_to_rate = "highest rate",
    .no_rate = "no rate",
    .in_steps = "in whole steps",
    .limits = "The limits: {}debt-to-income ratio (DTI) {}{}{}{}. Source: {}.",
    .limit_of_housing = "housing ratio {}, ",
    .limit_automated = " ({} with automated underwriting)",
    .limit_of_residual = ", and residual income",
    .passes_by_residual = "; DTI is over its limit, but passes because residual income is at "
                          "least {} of the guide",
    .least_income = "Lowest income a month that stays within the limits at today's rate: {}{}.{}",
    .least_income_automated = "; {} with automated underwriting",
    .no_rate_automated = " With automated underwriting, no rate stays within the limits.",
    .highest_rate_automated = " Highest rate with automated underwriting: {}{}.",
    .highest_in_steps = " ({} in whole steps)",
    .no_limits = "No income limits are shown: {}.",
    .steps_no_forecast =
        "A figure with a sign is the difference from the quote. Nobody knows where rates will be "
        "at closing: these are steps, not a forecast. In each step, every rate on the rate sheet "
        "moves by the same amount and keeps its points. Until you lock a rate, it can be any of "
        "these, or "
        "go beyond them.",
    .ratios_at_note_rate =
        "Ratios are of gross monthly income. They use the note rate or, where the rate can rise, "
        "the rate that the program uses to qualify buyers. Where the income changes here, the "
        "taxes on it stay the same. The ratios are guides from the published rules, not an "
        "approval: lenders look at more, and may go above them or stay below. Income and debts "
        "are private. They are shown because they are in the inquiry.",
};

} // namespace quoin::english
