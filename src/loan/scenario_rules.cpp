// Looking up the tables that govern a scenario.
#include <quoin/loan/scenario_rules.hpp>

#include <algorithm>

namespace quoin {

ScenarioRules rules_for(const Scenario& scenario, const LoanProgram& program,
                        const RateSheet& sheet, const Place& place, Date as_of, Date closing) {
    ScenarioRules rules;
    rules.scenario = &scenario;
    rules.program = &program;
    rules.place = &place;
    for (std::size_t i = 0; i < rule_count; ++i) {
        rules.rules[i] = program.in_force(static_cast<Rule>(i), as_of, closing);
    }
    rules.closing_costs = ClosingCosts(place.closing_costs, sheet.costs);
    rules.ladder = sheet.ladder(program.id, scenario.term.count(), scenario.lock_days);
    for (const Adjustment& adjustment : sheet.adjustments) {
        const auto& programs = adjustment.programs;
        if (std::find(programs.begin(), programs.end(), program.id) != programs.end()) {
            rules.adjustments.push_back(&adjustment.table);
        }
    }
    for (const BandTable& table : sheet.mortgage_insurance) {
        if (table.in_force(as_of)) rules.mi_factors = &table;
    }
    return rules;
}

} // namespace quoin
