// What can move before the closing.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct ShiftWords {
    Phrase<> title;
    Phrase<Money> contract_price;
    Phrase<Text, Money, Money, Text> scenario; ///< scenario, month, cash, terms

    // What moves besides the rate: percents and amounts with their sign.
    Phrase<> as_quoted;
    Phrase<Text> price; ///< percent
    Phrase<Text> options;
    Phrase<Text> appraisal; ///< percent
    Phrase<> month_at;      ///< a rate
    Phrase<> cash_at;
    Phrase<> not_available;
    Phrase<Text, Text> refused; ///< what moves, why the loan is not available then

    // Locks.
    Phrase<Rate> lock_costs;
    Phrase<> lock;
    Phrase<int> lock_days;
    Phrase<> lock_ends;
    Phrase<Date> lock_ends_on;
    Phrase<> ends_before_closing;
    Phrase<> lock_points;
    Phrase<> no_such_rate;
    Phrase<> lock_cash;

    // The income.
    Phrase<> if_income_changes; ///< the title of the table
    Phrase<> income;
    Phrase<> income_now;
    Phrase<> month;
    Phrase<> housing;
    Phrase<> with_debts;
    Phrase<> within;
    Phrase<> yes;
    Phrase<> no;
    Phrase<> up_to_rate;
    Phrase<> no_rate;
    Phrase<> in_steps;
    /// Housing, housing and debts, by automated underwriting, residual income, what stands in the
    /// place of a ratio, where the limits are written.
    Phrase<Text, Text, Text, Text, Text, Text> limits;
    Phrase<Text> limit_of_housing;
    Phrase<Text> limit_automated;
    Phrase<> limit_of_residual;
    Phrase<Text> passes_by_residual;        ///< percent of the guide
    Phrase<Money, Text, Text> least_income; ///< income, and by automated underwriting: that, rate
    Phrase<Money> least_income_automated;
    Phrase<> no_rate_automated;
    Phrase<Rate, Text> highest_rate_automated; ///< rate, the rate in whole steps
    Phrase<Rate> highest_in_steps;
    Phrase<Text> no_limits; ///< why

    // Cautions.
    Phrase<> steps_no_forecast;
    Phrase<> ratios_at_note_rate;
};

} // namespace quoin
