// The month that a buyer is held to: at the note rate, and where the rate will move at a higher
// one.
//
// 12 CFR 1026.43(c)(5)(i): the greater of the fully indexed rate and the introductory rate, in
// equal payments over the whole term; a program may ask for more. A temporary buydown changes
// nothing: such loans are qualified at the note rate (Fannie Mae Selling Guide B3-6-04).
#pragma once

#include <quoin/loan/loan_figures.hpp>

namespace quoin {

/// For a loan at a note rate; the note rate itself where it is fixed.
[[nodiscard]] Rate qualifying_rate(const ScenarioRules& rules, Rate note);

/// The settled month with principal and interest at the qualifying rate.
[[nodiscard]] Money qualifying_month(const ScenarioRules& rules, const LoanFigures& figures);

} // namespace quoin
