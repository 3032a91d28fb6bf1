// Looking up the tables that govern a scenario.
#include <quoin/loan/scenario_rules.hpp>

#include <algorithm>
#include <limits>
#include <utility>

#include <quoin/loan/prepaids.hpp>

namespace quoin {
namespace {

/// Edges of a table in the dimensions that move with the base loan.
void add_edges(const BandTable* table, std::vector<Edge>& edges) {
    if (table == nullptr) return;
    const std::size_t width = table->dimensions.size();
    for (std::size_t i = 0; i < table->bands.size(); ++i) {
        const Dimension dimension = table->dimensions[i % width];
        const Band& band = table->bands[i];
        const bool moves = dimension == Dimension::ltv || dimension == Dimension::down ||
                           dimension == Dimension::base_loan || dimension == Dimension::loan;
        if (!moves) continue;
        if (band.lowest > 0) edges.push_back({dimension, band.lowest - 1});
        if (band.highest < std::numeric_limits<std::int64_t>::max()) {
            edges.push_back({dimension, band.highest});
        }
    }
}

void collect_edges(ScenarioRules& rules) {
    for (const BandTable* table : rules.rules) add_edges(table, rules.edges);
    for (const BandTable* table : rules.adjustments) add_edges(table, rules.edges);
    if (rules.scenario->single_premium) add_edges(rules.single_premium, rules.edges);
    const auto order = [](const Edge& a, const Edge& b) {
        return std::pair(a.dimension, a.last) < std::pair(b.dimension, b.last);
    };
    std::sort(rules.edges.begin(), rules.edges.end(), order);
    const auto same = [](const Edge& a, const Edge& b) {
        return a.dimension == b.dimension && a.last == b.last;
    };
    rules.edges.erase(std::unique(rules.edges.begin(), rules.edges.end(), same), rules.edges.end());
}

/// The plan of an adjustable program with the margin and the index of the sheet.
std::optional<AdjustableTerms> adjustable_terms(const LoanProgram& program, const Ladder* ladder,
                                                const RateSheet& sheet) {
    if (!program.adjustable || ladder == nullptr || !ladder->margin || !sheet.index) return {};
    const AdjustablePlan& plan = *program.adjustable;
    return AdjustableTerms{plan.initial,    plan.reset, sheet.index->value,
                           *ladder->margin, plan.caps,  std::nullopt};
}

} // namespace

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
    rules.adjustable = adjustable_terms(program, rules.ladder, sheet);
    const auto in_force = [&](const BandTable& table) {
        return table.in_force(table.by_closing ? closing : as_of);
    };
    for (const Adjustment& adjustment : sheet.adjustments) {
        const auto& programs = adjustment.programs;
        const bool meant =
            std::find(programs.begin(), programs.end(), program.id) != programs.end();
        if (meant && in_force(adjustment.table)) rules.adjustments.push_back(&adjustment.table);
    }
    for (const BandTable& table : sheet.mortgage_insurance) {
        if (in_force(table)) rules.mi_factors = &table;
    }
    for (const BandTable& table : sheet.single_premium) {
        if (in_force(table)) rules.single_premium = &table;
    }
    collect_edges(rules);
    rules.closing = closing;
    rules.first_payment = first_payment_date(closing);
    rules.per_diem_year = sheet.per_diem_year;
    return rules;
}

} // namespace quoin
