// Rechecking a scenario: its schedule first, then each section from the home to the APR.
#include <quoin/answers/recheck.hpp>

#include <algorithm>

#include "ledger.hpp"
#include <quoin/exact/broken.hpp>

namespace quoin {

std::size_t RecheckAnswer::figure_count() const {
    std::size_t count = 0;
    for (const RecheckSection& section : sections) count += section.figures.size();
    return count;
}

std::size_t RecheckAnswer::differences() const {
    std::size_t count = 0;
    for (const RecheckSection& section : sections) {
        count += static_cast<std::size_t>(
            std::count_if(section.figures.begin(), section.figures.end(),
                          [](const RecheckedFigure& figure) { return !figure.agrees(); }));
    }
    return count;
}

RecheckAnswer recheck(const Sitting& sitting, std::size_t scenario) {
    const ScenarioRules& rules = sitting.rules(scenario);
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    const LoanFigures f = loan_figures(rules, home, sitting.inquiry().facts);
    RecheckAnswer answer;
    answer.heading = heading_of(sitting);
    answer.scenario = scenario_answer(sitting, rules, f);
    if (!f.available()) return answer;
    const RecheckCase of{sitting, rules, home, f};
    answer.months = recheck_months(of);
    ensure(answer.months.size() > static_cast<std::size_t>(f.schedule.months()),
           "every month of the schedule is run anew");
    answer.hud_balances = answer.months.front().hud_balance_by.kind != Formula::Kind::given;
    answer.bought_down = answer.months.size() > 1 && !answer.months[1].bought_down.is_zero();
    Ledger ledger(answer);
    recheck_home(of, ledger);
    recheck_loan(of, ledger);
    recheck_month(of, ledger);
    recheck_cash(of, ledger);
    recheck_credit_cost(of, answer.scenario.cost_of_credit, ledger);
    return answer;
}

} // namespace quoin
