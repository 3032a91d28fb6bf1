// From the value to the loan, its rate and the cash it takes: everything before the schedule.
#pragma once

#include <quoin/loan/loan_figures.hpp>

namespace quoin {

/// Fills the loan, rate, points and cash of `f`, whose price, value and local costs are set; adds a
/// refusal for each rule of the program that the scenario does not meet.
void size_loan(const ScenarioRules& rules, const PricedHome& home, const PurchaseFacts& facts,
               LoanFigures& f);

/// Why a scenario has no loan whatever the price: its term or its place.
[[nodiscard]] std::vector<Barred> barred_outright(const ScenarioRules& rules);

/// Whether a loan of any size may run at this rate: change, and be bought down, as the scenario
/// says.
[[nodiscard]] bool may_run_at(const ScenarioRules& rules, Rate rate);

/// The largest base loan, in whole dollars, that a table still reads at or before an edge; -1 where
/// there is none. LTV and down payment are read cut to 2 and 6 decimals of a percent.
[[nodiscard]] std::int64_t last_base_loan(const Edge& edge, Money value, Money price);

/// How many payments the annual fee is charged; the whole term where no rule says less.
[[nodiscard]] int fee_months(const ScenarioRules& rules, const LoanFigures& f);

} // namespace quoin
