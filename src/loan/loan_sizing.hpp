// From the value to the loan, its rate and the cash it takes: everything before the schedule.
#pragma once

#include <quoin/loan/loan_figures.hpp>

namespace quoin {

/// The loan of a scenario with its rate and cash; and a refusal for each rule of the program that
/// it does not meet.
struct Sized {
    SizedLoan loan;
    std::vector<Refusal> refusals;
};
[[nodiscard]] Sized size_loan(const ScenarioRules& rules, const PricedHome& home,
                              const PurchaseFacts& facts, const HomeFigures& of_home);

/// Why a scenario has no loan whatever the price: its term or its place.
[[nodiscard]] std::vector<Barred> barred_outright(const ScenarioRules& rules);

/// Whether a loan of any size may run at this rate: change, and be bought down, as the scenario
/// says.
[[nodiscard]] bool may_run_at(const ScenarioRules& rules, Rate rate);

/// The largest base loan, in whole dollars, that a table still reads at or before an edge; -1 where
/// there is none. LTV and down payment are read cut to 2 and 6 decimals of a percent.
[[nodiscard]] std::int64_t last_base_loan(const Edge& edge, Money value, Money price);

/// How many payments the annual fee is charged; the whole term where no rule says less.
[[nodiscard]] int fee_months(const ScenarioRules& rules, const LentLoan& loan);

} // namespace quoin
