// The least that a month and the cash can come to for any price in a range, under one scenario.
//
// Figures jump where a table changes rows, so those at the ends of a range say nothing of what lies
// between. Here every table is read for the whole range at once, and each step of loan_figures
// takes the least that any row it may read allows; a step without such a limit counts as nothing.
// So loan_figures is never below, for no price in the range, and `possible` is false only where
// every price in it is refused. The narrower the range, the nearer.
#pragma once

#include <quoin/loan/loan_figures.hpp>

namespace quoin {

struct PriceRange {
    Money least;
    Money most;
    Money credits; ///< the most that incentives put to costs, points or a buydown come to
    bool flood_zone = false;
};

struct LeastFigures {
    bool possible = false;
    Money monthly; ///< Monthly::total(), settled
    Money cash;    ///< CashToClose::needed()
    Money loan;    ///< with what is financed; no month counted a smaller one
    Rate rate;     ///< nor a lower note rate
};

[[nodiscard]] LeastFigures least_figures(const ScenarioRules& rules, const PurchaseFacts& facts,
                                         const PriceRange& range);

} // namespace quoin
