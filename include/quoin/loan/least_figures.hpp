// The least that a month and the cash can come to for any price in a range, under one scenario.
//
// Figures jump where a table changes rows, so those at the ends of a range say nothing of what lies
// between. Here every table is read for the whole range at once, and each step of loan_figures
// takes the least that any row it may read allows; a step without such a limit counts as nothing.
// So loan_figures is never below, for no price in the range, and `possible` is false only where
// every price in it is refused. The narrower the range, the nearer.
#pragma once

#include <functional>
#include <optional>

#include <quoin/loan/loan_figures.hpp>

namespace quoin {

/// Of all the cash there is, so many months are left over.
struct KeptBack {
    int months = 0;
    Money of;
};

struct PriceRange {
    Money least;
    Money most;
    std::vector<Credit> incentives; ///< as incentive_credits; at no price do they come to more
    bool flood_zone = false;
    std::optional<KeptBack> kept; ///< where the down payment is whatever the cash allows
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

/// Whether `passes` holds for the least figures of some of the loans there may be in the range.
/// They are told in parts, each bounded for itself, from the smallest loans up: where the down
/// payment is whatever the cash allows, the loan of a price is known within wide bounds only, and
/// tables change rows between them. One part else.
bool any_least_figures(const ScenarioRules& rules, const PurchaseFacts& facts,
                       const PriceRange& range,
                       const std::function<bool(const LeastFigures&)>& passes);

} // namespace quoin
