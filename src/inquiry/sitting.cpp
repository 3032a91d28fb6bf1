// Looking up what governs an inquiry's scenarios.
#include <quoin/inquiry/sitting.hpp>

#include <quoin/exact/broken.hpp>

namespace quoin {

namespace {

/// What holds of every inquiry that was read against a desk without findings.
void ensure_read(const Inquiry& inquiry) {
    const Selection& home = inquiry.selection;
    ensure(inquiry.contract <= inquiry.closing, "a contract is not after its closing");
    for (const Pick& pick : home.picks) {
        ensure(home.find(pick.option) == &pick, "an option is selected once");
    }
    for (const Scenario& scenario : inquiry.scenarios) {
        ensure(inquiry.find_scenario(scenario.name) == &scenario, "a scenario is told by its name");
        ensure(shortest_term <= scenario.term && scenario.term <= longest_term,
               "a scenario's term has 1 to 480 months");
        ensure(scenario.extra_principal >= Money{} && scenario.down.amount >= Money{},
               "what a scenario pays is not under zero");
    }
    for (const Credit& credit : inquiry.facts.credits) {
        ensure(credit.amount >= Money{} && !credit.uses.empty(), "a credit pays something");
    }
}

} // namespace

Sitting::Sitting(const Desk& desk, const Inquiry& inquiry, const Watch* watch)
    : desk_(&desk), inquiry_(&inquiry), sheet_(nullptr), place_(nullptr) {
    ensure_read(inquiry);
    const Lending& lending = desk.lending;
    sheet_ = inquiry.sheet(lending);
    const std::string& name = inquiry.place.empty() ? desk.book.community.place : inquiry.place;
    const auto place = index_of(lending.places, name);
    ensure(sheet_ != nullptr && place.has_value(),
           "an inquiry that was read names its sheet and place");
    place_ = &at(lending.places, *place);
    for (const Scenario& scenario : inquiry.scenarios) {
        const auto program = index_of(lending.programs, scenario.program);
        ensure(program.has_value(), "an inquiry that was read names its programs");
        rules_.push_back(rules_for(scenario, at(lending.programs, *program), *sheet_, *place_,
                                   inquiry.as_of, inquiry.closing));
        rules_.back().watch = watch;
    }
}

const ScenarioRules& Sitting::rules(std::size_t scenario) const {
    ensure(scenario < rules_.size(), "a question is of one of the sitting's scenarios");
    return rules_[scenario];
}

Sitting Sitting::only(std::size_t scenario) const {
    Sitting alone = *this;
    alone.rules_ = {rules(scenario)};
    return alone;
}

std::vector<LoanFigures> Sitting::figures(const PricedHome& home) const {
    std::vector<LoanFigures> all;
    all.reserve(rules_.size());
    for (const ScenarioRules& rules : rules_) {
        all.push_back(loan_figures(rules, home, inquiry_->facts));
    }
    return all;
}

} // namespace quoin
