// The rate that a buyer qualifies at, and the month at it.
#include <quoin/loan/qualifying.hpp>

#include <algorithm>

#include <quoin/loan/adjustable.hpp>
#include <quoin/loan/level_payment.hpp>

namespace quoin {

Rate qualifying_rate(const ScenarioRules& rules, Rate note) {
    if (!rules.adjustable || !rules.program->adjustable) return note;
    const Decimal raised =
        note.percent() + rules.program->adjustable->qualifying_over_initial.value();
    const Rate indexed = fully_indexed_rate(*rules.adjustable, rules.adjustable->index);
    return std::max(Rate::percent(raised).value_or(note), indexed);
}

Money qualifying_month(const ScenarioRules& rules, const LoanFigures& figures) {
    const Rate rate = qualifying_rate(rules, figures.rate);
    const Money month = figures.monthly.total();
    if (rate == figures.rate) return month;
    return month - figures.monthly.principal_and_interest +
           level_payment(figures.loan, rate, rules.scenario->term);
}

} // namespace quoin
