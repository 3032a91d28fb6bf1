// Looking for the least score: figures change only where a band of some table begins.
#include "least_score.hpp"

#include <functional>
#include <set>

#include <quoin/answers/compare.hpp>
#include <quoin/render/answers.hpp>

#include "../interruption.hpp"

namespace quoin::apps {
namespace {

constexpr int lowest_score = 300; // that an inquiry may have

/// Scores at which a row of the table begins.
void add_edges(const BandTable* table, std::set<int, std::greater<>>& edges) {
    if (table == nullptr) return;
    const std::size_t width = table->dimensions.size();
    for (std::size_t i = 0; i < table->bands.size(); ++i) {
        if (table->dimensions[i % width] != Dimension::score) continue;
        const Band& band = table->bands[i];
        for (const std::int64_t start : {band.lowest, band.highest}) {
            if (start <= 0 || start > Decimal::whole(1000).billionths()) continue;
            const auto score = static_cast<int>(start / Decimal::one);
            edges.insert({score, score + 1}); // whichever of both is in the band, or next to it
        }
    }
}

std::set<int, std::greater<>> edges_of(const Sitting& sitting) {
    std::set<int, std::greater<>> edges;
    for (const ScenarioRules& rules : sitting.rules()) {
        for (const BandTable* table : rules.adjustments) add_edges(table, edges);
        for (const auto& edition : rules.editions.rules) add_edges(edition.rule(), edges);
        add_edges(rules.mi_factors.rule(), edges);
        add_edges(rules.single_premium.rule(), edges);
    }
    return edges;
}

/// An inquiry with some of its scenarios.
Inquiry with_these(Inquiry inquiry, const std::vector<std::size_t>& scenarios) {
    std::vector<Scenario> some;
    for (const std::size_t i : scenarios) some.push_back(inquiry.scenarios.at(i));
    inquiry.scenarios = std::move(some);
    return inquiry;
}

/// Every figure of its loans at a score, as answers tell them.
std::string figures_at(const Desk& desk, Inquiry inquiry, int score) {
    for (Scenario& scenario : inquiry.scenarios) scenario.score = score;
    const Sitting sitting(desk, inquiry, &not_interrupted());
    CompareAnswer loans = compare(sitting);
    for (ScenarioAnswer& scenario : loans.scenarios) scenario.terms.score.reset();
    AddsAnswer changes = adds(sitting, {});
    for (AddsScenario& scenario : changes.scenarios) scenario.terms.score.reset();
    return json_text_of(loans) + json_text_of(changes);
}

} // namespace

int least_score(const Desk& desk, const Inquiry& inquiry,
                const std::vector<std::size_t>& scenarios) {
    const Inquiry some = with_these(inquiry, scenarios);
    const int real = some.scenarios.front().score.value();
    const std::string figures = figures_at(desk, some, real);
    for (const int edge : edges_of(Sitting(desk, some))) {
        if (edge > real) continue;
        if (edge <= lowest_score) break;
        if (figures_at(desk, some, edge - 1) != figures) return edge;
    }
    return lowest_score;
}

} // namespace quoin::apps
