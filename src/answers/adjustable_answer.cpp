// From an adjustable loan's terms to what its payments may come to.
#include <quoin/answers/adjustable_answer.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {

std::optional<AdjustableAnswer> adjustable_answer(const ScenarioRules& rules,
                                                  const RateSheet& sheet, const LoanFigures& f) {
    if (!rules.adjustable) return std::nullopt;
    ensure(f.available(), "payments are told of a loan that can be had");
    const AdjustableTerms& terms = *rules.adjustable;
    const LoanTerms note{f.loan, f.rate, rules.scenario.term};
    return AdjustableAnswer{
        terms.initial,
        terms.reset,
        sheet.index.value(),
        terms.margin,
        terms.caps,
        fully_indexed_rate(terms, terms.index),
        ceiling_rate(note, terms),
        f.schedule.steps(),
        amortize(note, worst_case_path(note, terms), {}, f.schedule.at_closing()).steps()};
}

Money AdjustableAnswer::largest_payment() const {
    Money largest;
    for (const PaymentStep& step : worst) largest = std::max(largest, step.payment);
    return largest;
}

} // namespace quoin
