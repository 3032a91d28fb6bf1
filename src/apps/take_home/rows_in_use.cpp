// Noting the rows that loans were looked up in.
#include "rows_in_use.hpp"

namespace quoin::apps {
namespace {

void note_row(RowsInUse& use, const BandTable* table, int row) {
    if (table != nullptr && row != no_row) use.rows[table].insert(row);
}

void note_loan(RowsInUse& use, const ScenarioRules& rules, const LoanFigures& loan) {
    const bool quoted = rules.scenario.rate.by == RateChoice::By::quoted;
    const bool reads_ladder = !quoted || rules.adjustable.has_value();
    if (rules.ladder != nullptr && reads_ladder) {
        std::set<int>& rungs = use.rungs[rules.ladder];
        const int rung = loan.row(Lookup::note_rate);
        if (rung != no_row) rungs.insert(rung);
    }
    for (std::size_t i = 0; i < loan.rows.adjustments.size(); ++i) {
        const BandTable* table = rules.adjustments[i];
        note_row(use, table, loan.rows.adjustments[i]);
        if (loan.rows.adjustments[i] == no_row) {
            use.without[table].push_back(gross_case(rules, loan));
        }
    }
    note_row(use, rules.mi_factors.rule(), loan.row(Lookup::mi_factor));
    note_row(use, rules.single_premium.rule(), loan.row(Lookup::single_premium));
}

} // namespace

RowsInUse rows_in_use(const Sitting& sitting) {
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    RowsInUse use;
    for (const ScenarioRules& rules : sitting.rules()) {
        const LoanFigures loan = loan_figures(rules, home, sitting.inquiry().facts);
        note_loan(use, rules, loan);
        if (loan.points <= Points{} || rules.scenario.rate.by == RateChoice::By::quoted) continue;
        Scenario plain = rules.scenario;
        plain.rate = {RateChoice::By::points, Points{}, Rate{}};
        const ScenarioRules changed = rules.with(plain);
        note_loan(use, changed, loan_figures(changed, home, sitting.inquiry().facts));
    }
    return use;
}

} // namespace quoin::apps
