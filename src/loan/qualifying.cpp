// The rate that a buyer qualifies at, and the month at it.
#include <quoin/loan/qualifying.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/adjustable.hpp>
#include <quoin/loan/level_payment.hpp>

namespace quoin {

Rate qualifying_rate(const ScenarioRules& rules, Rate note) {
    if (!rules.adjustable || !rules.program->adjustable) return note;
    const Decimal raised =
        note.percent() + rules.program->adjustable->qualifying_over_initial.value();
    const Rate indexed = fully_indexed_rate(*rules.adjustable, rules.adjustable->index);
    const Rate rate = std::max(Rate::percent(raised).value_or(note), indexed);
    ensure(rate >= note, "a buyer qualifies at the note rate or a higher one");
    return rate;
}

Money qualifying_month(const ScenarioRules& rules, const LoanFigures& figures) {
    const Rate rate = qualifying_rate(rules, figures.rate);
    const Money month = figures.monthly.total();
    if (rate == figures.rate) return month;
    const Money qualifying = month - figures.monthly[MonthPart::principal_and_interest] +
                             level_payment(figures.loan, rate, rules.scenario.term);
    ensure(qualifying >= month,
           "the month that a buyer is held to is no smaller than the one paid");
    return qualifying;
}

} // namespace quoin
