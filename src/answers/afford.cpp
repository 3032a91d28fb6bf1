// Answering how much home each scenario allows.
#include <quoin/answers/afford.hpp>

#include <algorithm>

#include "afford_search.hpp"
#include <quoin/exact/broken.hpp>
#include <quoin/loan/qualifying.hpp>

namespace quoin {
namespace {

/// Homes of the price book on free lots that fit, by plan, without options. No price above the
/// highest fits; in another flood zone that is not known.
std::vector<AffordPlan> plans_that_fit(const Sitting& sitting, AffordSearch& search,
                                       Money highest) {
    const PriceBook& book = sitting.book();
    std::vector<AffordPlan> plans;
    for (const Index<Plan> index : indexes_of(book.plans)) {
        const Plan& plan = at(book.plans, index);
        AffordPlan found;
        found.plan = plan.id;
        for (const Elevation& elevation : plan.elevations) {
            for (const Lot& lot : book.lots) {
                const bool offered = lot.status == LotStatus::free && allows(lot.plans, index);
                if (!offered) continue;
                const Money price = plan.base_price + elevation.price + lot.premium;
                if (price > highest && lot.flood_zone == search.flood_zone()) continue;
                if (!search.trial(price, lot.flood_zone).fits()) continue;
                ++found.homes;
                if (found.homes > 1 && found.price <= price) continue;
                found.elevation = elevation.id;
                found.lot = lot.id;
                found.price = price;
            }
        }
        if (found.homes > 0) plans.push_back(std::move(found));
    }
    return plans;
}

/// The least price of the book, or of nothing: where a search that finds nothing says how it
/// misses.
Money least_price_of(const PriceBook& book) {
    std::optional<Money> least;
    for (const Plan& plan : book.plans)
        least = std::min(least.value_or(plan.base_price), plan.base_price);
    return least.value_or(Money::dollars(1000));
}

void add_what_binds(AffordSearch& search, AffordScenario& out) {
    const PriceTrial above = search.trial(*out.price + Money::dollars(1));
    out.binds = above.broken;
    ensure(!above.fits() || *out.price >= AffordSearch::top,
           "a dollar more than the highest price does not fit");
    out.refusals = above.figures.refusals;
    if (out.binds.empty()) return; // the highest price that is looked at
    // A limit that stands further off than this is not the next one to meet.
    const Money furthest = *out.price * 4;
    const auto next = search.highest(out.binds, furthest);
    if (!next || *next <= *out.price || *next >= furthest) return;
    out.next_price = next;
    const PriceTrial there = search.trial(*next);
    ensure(
        std::includes(out.binds.begin(), out.binds.end(), there.broken.begin(), there.broken.end()),
        "the next price breaks nothing but what binds");
    for (const AffordLimit limit : search.trial(*next + Money::dollars(1)).broken) {
        const bool known = std::find(out.binds.begin(), out.binds.end(), limit) != out.binds.end();
        if (!known) out.next_binds.push_back(limit);
    }
}

/// With the limits on the income that are used beyond their end.
ScenarioTerms terms_of(const ScenarioAnswer& scenario, const AffordSearch& search) {
    ScenarioTerms terms = scenario.terms;
    const auto& more = search.income().continued();
    terms.continued.insert(terms.continued.end(), more.begin(), more.end());
    return terms;
}

AffordScenario afford_scenario(const Sitting& sitting, std::size_t scenario,
                               const AffordFacts& facts) {
    AffordSearch search(sitting, scenario, facts);
    const ScenarioRules& rules = sitting.rules()[scenario];
    AffordScenario out;
    if (search.income().ratios() != nullptr) out.ratios = *search.income().ratios();
    out.back = search.income().back();
    out.automated = search.income().automated();
    out.residual = search.income().residual();
    out.price = search.highest({});
    if (!out.price) {
        out.least_price = least_price_of(sitting.book());
        const PriceTrial least = search.trial(out.least_price);
        out.nearest = least.rooms;
        out.refusals = least.figures.refusals;
        out.scenario = scenario_answer(sitting, rules, least.figures);
        out.terms = terms_of(out.scenario, search);
        return out;
    }
    const PriceTrial at = search.trial(*out.price);
    ensure(at.fits(), "the highest price fits");
    ensure(search.is_open(*out.price), "no bound shuts out a price that fits");
    ensure_equal(at.figures.price, *out.price, "the highest price is the one that is told");
    out.scenario = scenario_answer(sitting, rules, at.figures);
    out.terms = terms_of(out.scenario, search);
    out.rooms = at.rooms;
    const Rate rate = qualifying_rate(rules, at.figures.rate);
    if (rate != at.figures.rate) {
        out.qualifying_rate = rate;
        out.qualifying_source = rules.program->adjustable->qualifying_source;
    }
    if (out.residual && out.residual->tested()) {
        out.residual_guide = search.income().guide(at.figures.loan);
    }
    out.passes_by_ratio = at.passes_by_ratio;
    add_what_binds(search, out);
    if (facts.step > Money{}) out.step = search.step_to(*out.price + facts.step);
    out.plans = plans_that_fit(sitting, search, *out.price);
    return out;
}

} // namespace

AffordAnswer afford(const Sitting& sitting, const AffordFacts& facts) {
    AffordAnswer answer;
    answer.heading = heading_of(sitting);
    answer.facts = facts;
    for (std::size_t i = 0; i < sitting.rules().size(); ++i) {
        answer.scenarios.push_back(afford_scenario(sitting, i, facts));
    }
    return answer;
}

std::optional<Money> highest_price(const Sitting& sitting, std::size_t scenario,
                                   const AffordFacts& facts) {
    return AffordSearch(sitting, scenario, facts).highest({});
}

bool fits_at(const Sitting& sitting, std::size_t scenario, const AffordFacts& facts, Money price) {
    return AffordSearch(sitting, scenario, facts).trial(price).fits();
}

} // namespace quoin
