// Answering what options add: each one alone or taken out, and the buyer's picks stacked.
#include <quoin/answers/adds.hpp>

#include <algorithm>

#include "add_item.hpp"
#include "difference.hpp"
#include <quoin/exact/broken.hpp>
#include <quoin/home/rules.hpp>
#include <quoin/loan/level_payment.hpp>
#include <quoin/text/problems.hpp>

namespace quoin {
namespace {

/// Every form of an option that changes the price: the option itself, each level that is charged.
void add_forms(const PriceBook& book, const Selection& selection, Index<Option> index,
               std::vector<Pick>& picks) {
    const Option& option = at(book.options, index);
    Pick pick;
    pick.option = index;
    if (option.kind == OptionKind::levels) {
        for (const Index<Level> level : indexes_of(option.levels)) {
            pick.level = level;
            const auto price = unit_price(option, pick.level, selection.plan);
            if (price && !price->is_zero()) picks.push_back(pick);
        }
    } else if (option.kind == OptionKind::allowance) {
        if (const Pick* present = selection.find(index)) picks.push_back(*present);
    } else if (option.kind != OptionKind::choice) {
        const Pick* present = selection.find(index);
        picks.push_back(present != nullptr ? *present : pick);
    }
}

std::vector<Pick> every_form(const Sitting& sitting) {
    const PriceBook& book = sitting.book();
    std::vector<Pick> picks;
    for (const Index<Area> area : indexes_of(book.areas)) {
        for (const Index<Option> option : indexes_of(book.options)) {
            if (at(book.options, option).area != area) continue;
            add_forms(book, sitting.inquiry().selection, option, picks);
        }
    }
    return picks;
}

void stack(const Sitting& sitting, const Standpoint& now, AddsAnswer& answer) {
    const PriceBook& book = sitting.book();
    Selection selection = sitting.inquiry().selection;
    const std::vector<Pick> picks = selection.picks;
    selection.picks.clear();
    const Standpoint bare = standpoint(sitting, selection);
    Standpoint before = bare;
    for (const Pick& pick : picks) {
        selection.picks.push_back(pick);
        const Option& option = at(book.options, pick.option);
        if (option.kind == OptionKind::choice) continue; // changes nothing that is counted
        Standpoint after = standpoint(sitting, selection);
        answer.stacked.push_back({name_of(book, {pick.option, pick.level}), option.name,
                                  level_name(option, pick.level),
                                  after.home.contract_price - before.home.contract_price,
                                  differences(sitting, before.figures, after.figures)});
        before = std::move(after);
    }
    answer.whole = {"", "", "", now.home.contract_price - bare.home.contract_price,
                    differences(sitting, bare.figures, now.figures)};
}

/// What the stacked figures of one scenario sum to; nothing where one of them is not to be had.
std::optional<Added> sum_of_stacked(const AddsAnswer& answer, std::size_t scenario) {
    Added sum;
    for (const AddsStep& step : answer.stacked) {
        const Added& one = step.by_scenario[scenario];
        if (!one.available()) return std::nullopt;
        sum.per_month += one.per_month;
        sum.cash += one.cash;
        sum.to_close += one.to_close;
        sum.in_five_years += one.in_five_years;
        sum.over_loan += one.over_loan;
    }
    return sum;
}

/// The promise of the stacked figures: they sum to the whole.
void check(const AddsAnswer& answer) {
    Money price;
    for (const AddsStep& step : answer.stacked) price += step.price;
    ensure_equal(price, answer.whole.price, "stacked prices sum to that of the whole");
    for (std::size_t scenario = 0; scenario < answer.scenarios.size(); ++scenario) {
        const Added& whole = answer.whole.by_scenario[scenario];
        const auto sum = sum_of_stacked(answer, scenario);
        if (!whole.available() || !sum) continue;
        ensure_equal(sum->per_month, whole.per_month, "stacked months sum to the whole's");
        ensure_equal(sum->cash, whole.cash, "stacked cash sums to the whole's");
        ensure_equal(sum->to_close, whole.to_close, "stacked cash to close sums to the whole's");
        ensure_equal(sum->in_five_years, whole.in_five_years,
                     "what is stacked over five years sums to the whole's");
        ensure_equal(sum->over_loan, whole.over_loan,
                     "what is stacked over the loan sums to the whole's");
    }
}

std::vector<AddsScenario> scenarios_of(const Sitting& sitting, const Standpoint& now) {
    std::vector<AddsScenario> scenarios;
    for (std::size_t i = 0; i < now.figures.size(); ++i) {
        const LoanFigures& f = now.figures[i];
        const ScenarioRules& rules = sitting.rules()[i];
        const ScenarioAnswer answer = scenario_answer(sitting, rules, f);
        scenarios.push_back({answer.terms,
                             level_payment(Money::dollars(1000), f.rate, rules.scenario.term),
                             answer.monthly, answer.refusals});
    }
    return scenarios;
}

} // namespace

AddsAnswer adds(const Sitting& sitting, const std::vector<Pick>& asked) {
    AddsAnswer answer;
    answer.heading = heading_of(sitting);
    const Standpoint now = standpoint(sitting, sitting.inquiry().selection);
    answer.asked = !asked.empty();
    answer.contract_price = now.home.contract_price;
    answer.scenarios = scenarios_of(sitting, now);
    for (const Pick& pick : asked.empty() ? every_form(sitting) : asked) {
        answer.items.push_back(add_item(sitting, now, pick));
    }
    stack(sitting, now, answer);
    check(answer);
    return answer;
}

} // namespace quoin
