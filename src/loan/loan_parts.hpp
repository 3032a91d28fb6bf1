// The loans there may be on a range of prices, cut where a table changes rows.
//
// LTV and the percent down follow from the share of the price that is lent, so the edges of their
// bands cut the loans of every price alike; edges in dollars cut them again. In a part every table
// that moves with the loan is read at one row, at whatever price.
#pragma once

#include <vector>

#include <quoin/loan/scenario_rules.hpp>

namespace quoin {

/// Base loans on any price of a range. They are whole dollars; all ends may be reached.
struct LoanPart {
    Money least;
    Money most;
    Decimal least_ltv; ///< as tables are read at
    Decimal most_ltv;
    Decimal least_down; ///< percent of the price, as tables are read at
    Decimal most_down;
    Money left_out; ///< of any price at least this is not lent
    /// Those that are of this part at every price; where the first is larger, there are none.
    Money least_at_all;
    Money most_at_all;
};

/// From the smallest loans up: at no price is one of a later part smaller than one of an earlier.
/// Precondition: prices from 0 up, `least` not over `most`; the value is the price.
[[nodiscard]] std::vector<LoanPart> loan_parts(const ScenarioRules& rules, Money least, Money most);

} // namespace quoin
