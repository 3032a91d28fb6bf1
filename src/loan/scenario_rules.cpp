// Looking up the tables that govern a scenario.
#include <quoin/loan/scenario_rules.hpp>

#include <algorithm>
#include <limits>
#include <utility>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/fee_methods.hpp>
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
    rules.edges.clear();
    for (const auto& edition : rules.editions.rules) add_edges(edition.rule(), rules.edges);
    for (const BandTable* table : rules.adjustments) add_edges(table, rules.edges);
    if (rules.scenario.single_premium) add_edges(rules.single_premium.rule(), rules.edges);
    if (rules.lender_insures()) add_edges(rules.mi_factors.rule(), rules.edges);
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

/// A home is always insured: a table that has ended is never no rule.
void note_homeowner(const Place& place, const RuleDays& days, ListGaps& gaps) {
    Edition<BandTable> edition;
    edition.consider(place.homeowner, days.of(place.homeowner));
    if (edition.continues()) gaps.continued.push_back(edition.gap(RuleList::homeowner));
    if (edition.rule() == nullptr) gaps.unknown.push_back(edition.gap(RuleList::homeowner));
}

} // namespace

bool ScenarioRules::lender_insures() const {
    return program->annual != nullptr && program->annual->is_lenders;
}

bool ScenarioRules::always_reads(RuleList list) const {
    switch (list) {
    case RuleList::upfront_fee:
        return program->upfront != nullptr && !(lender_insures() && scenario.single_premium);
    case RuleList::annual_fee:
    case RuleList::annual_fee_months:
        return program->annual != nullptr && !lender_insures();
    case RuleList::points_adjustment:
        return scenario.rate.by != RateChoice::By::quoted;
    case RuleList::mi_factors:
    case RuleList::single_premium:
    case RuleList::ratios:
    case RuleList::residual_income:
        return false;
    default:
        return true;
    }
}

void ScenarioRules::choose(Scenario changed) {
    ensure(changed.program == scenario.program && changed.term == scenario.term &&
               changed.lock_days == scenario.lock_days,
           "a changed scenario keeps to what its rules were looked up by");
    const bool other_tables = changed.single_premium != scenario.single_premium;
    scenario = std::move(changed);
    if (other_tables) collect_edges(*this);
}

ScenarioRules ScenarioRules::with(Scenario changed) const {
    ScenarioRules rules = *this;
    rules.choose(std::move(changed));
    return rules;
}

ScenarioRules rules_for(const Scenario& scenario, const LoanProgram& program,
                        const RateSheet& sheet, const Place& place, Date as_of, Date closing) {
    ScenarioRules rules;
    rules.scenario = scenario;
    rules.program = &program;
    rules.place = &place;
    const RuleDays days{as_of, closing};
    rules.editions = editions_of(program, days);
    rules.mi_factors = edition_on(sheet.mortgage_insurance, days);
    rules.single_premium = edition_on(sheet.single_premium, days);
    rules.gaps = rules.editions.gaps();
    rules.gaps.note(RuleList::mi_factors, rules.mi_factors);
    rules.gaps.note(RuleList::single_premium, rules.single_premium);
    rules.adjustments = adjustments_on(sheet, program.id, days, rules.gaps);
    note_homeowner(place, days, rules.gaps);
    rules.closing_costs = ClosingCosts(place.closing_costs, sheet.costs);
    rules.ladder = sheet.ladder(program.id, scenario.term.count(), scenario.lock_days);
    rules.adjustable = adjustable_terms(program, rules.ladder, sheet);
    collect_edges(rules);
    rules.closing = closing;
    rules.first_payment = first_payment_date(closing);
    rules.per_diem_year = sheet.per_diem_year;
    ensure(closing < rules.first_payment, "a first payment comes after the closing");
    ensure(rules.ladder == nullptr || rules.ladder->lock_days >= scenario.lock_days,
           "a rate is locked for as long as is asked");
    return rules;
}

} // namespace quoin
