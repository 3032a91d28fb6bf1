// What can move before the closing, in English.
#pragma once

#include "words/shift.hpp"

namespace quoin::english {

inline constexpr ShiftWords shift = {
    .title = "What can move before the closing",
    .price_as_it_stands = "contract price as it stands {}",
    .scenario = "{}: {} a month, {} cash needed. {}",
    .as_it_stands = "as it stands",
    .price = "price {}%",
    .options = "options {}",
    .appraisal = "appraised {}%",
    .month_at = "the month at",
    .cash_at = "the cash at",
    .not_to_be_had = "not to be had",
    .refused = "{}: {}",
    .lock_costs = "What a lock of {} costs (* the one chosen)",
    .lock = "lock",
    .lock_days = "{} days",
    .lock_ends = "taken now ends",
    .lock_ends_on = "{:en}",
    .ends_before_closing = "before the closing",
    .lock_points = "points at today's rate",
    .no_such_rate = "no such rate",
    .lock_cash = "cash against the chosen one",
    .if_income_changes = "If the income changes: its part for housing, and the highest rate within "
                         "the limits",
    .income = "income",
    .month = "a month",
    .housing = "housing",
    .with_debts = "with debts",
    .within = "within",
    .yes = "yes",
    .no = "no",
    .up_to_rate = "up to a rate of",
    .no_rate = "no rate",
    .in_steps = "in whole steps",
    .limits = "The limits: {}housing and debts {}{}{}{}. Source: {}.",
    .limit_of_housing = "housing {}, ",
    .limit_automated = " ({} by automated underwriting)",
    .limit_of_residual = ", and the residual income for living",
    .passes_by_residual = "; the ratio is over its limit, and a residual income of {} of the guide "
                          "stands in its place",
    .least_income = "The least income a month that stays within them at today's rate: {}{}.{}",
    .least_income_automated = "; {} by automated underwriting",
    .no_rate_automated = " The highest rate by automated underwriting: at no rate.",
    .highest_rate_automated = " The highest rate by automated underwriting: up to {}{}.",
    .highest_in_steps = " ({} in whole steps)",
    .no_limits = "No limits on the income: {}.",
    .steps_no_forecast =
        "A figure with a sign is the difference to the quote as it stands. Nobody knows where "
        "rates will be at the closing: these are steps, not a forecast. A rate moves as the whole "
        "ladder does, each rung with its points. Until a rate is locked it can be any of these, or "
        "past them.",
    .ratios_at_note_rate =
        "Ratios are of gross monthly income, at the note rate; of a loan whose rate can rise, at "
        "the rate that its program qualifies buyers at. Where the income moves, the taxes on it "
        "stay as they are. They are guides of the published rules, not an approval: lenders look "
        "at more, and go above or stay below. Income and debts are private: they are shown because "
        "the inquiry has them.",
};

} // namespace quoin::english
