// Looking up what governs an inquiry's scenarios.
#include <quoin/inquiry/sitting.hpp>

#include <quoin/exact/broken.hpp>

namespace quoin {

Sitting::Sitting(const Desk& desk, const Inquiry& inquiry, const Watch* watch)
    : desk_(&desk), inquiry_(&inquiry), sheet_(nullptr), place_(nullptr) {
    const Lending& lending = desk.lending;
    sheet_ = inquiry.sheet(lending);
    const std::string& name = inquiry.place.empty() ? desk.book.community.place : inquiry.place;
    const int place = index_of(lending.places, name);
    ensure(sheet_ != nullptr && place >= 0, "an inquiry that was read names its sheet and place");
    place_ = &at(lending.places, place);
    for (const Scenario& scenario : inquiry.scenarios) {
        const int program = index_of(lending.programs, scenario.program);
        ensure(program >= 0, "an inquiry that was read names its programs");
        rules_.push_back(rules_for(scenario, at(lending.programs, program), *sheet_, *place_,
                                   inquiry.as_of, inquiry.closing));
        rules_.back().watch = watch;
    }
}

Sitting Sitting::only(std::size_t scenario) const {
    Sitting alone = *this;
    alone.rules_ = {rules_.at(scenario)};
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
