// Looking up the editions of a program, a sheet and a place, and which of them end.
#include <quoin/lending/editions.hpp>

#include <algorithm>
#include <map>

namespace quoin {
namespace {

std::vector<const BandTable*>
editions_of_adjustment(const RateSheet& sheet, const std::string& program, const Adjustment& of) {
    std::vector<const BandTable*> editions;
    for (const Adjustment& other : sheet.adjustments) {
        const auto& programs = other.programs;
        const bool meant = std::find(programs.begin(), programs.end(), program) != programs.end();
        const bool same =
            &other == &of || (!of.table.name.empty() && other.table.name == of.table.name);
        if (meant && same) editions.push_back(&other.table);
    }
    return editions;
}

/// Adds the last edition of a list, where it ends in time and no other takes over.
class Ends {
  public:
    Ends(Date day, Date by) : days_{day, day}, by_(by) {}

    template <class Item>
    void look_at(RuleList list, const std::vector<Item>& items, const std::string& name = {}) {
        const Edition<Item> edition = edition_on(items, days_);
        using State = typename Edition<Item>::State;
        const bool held = edition.state() == State::in_force || edition.state() == State::ended;
        if (!held || !edition.found()->until) return;
        const Date end = *edition.found()->until;
        const bool taken_over = std::any_of(
            items.begin(), items.end(), [&](const Dated& other) { return other.in_force(end); });
        if (end >= by_ || taken_over) return;
        found.push_back({list, name, end, edition.found()->after});
    }

    std::vector<Ending> found;

  private:
    RuleDays days_;
    Date by_;
};

} // namespace

ListGaps ProgramEditions::gaps() const {
    ListGaps gaps;
    for (std::size_t i = 0; i < rule_count; ++i) {
        gaps.note(list_of(static_cast<Rule>(i)), rules[i]);
    }
    gaps.note(RuleList::ratios, ratios);
    gaps.note(RuleList::residual_income, residual_income);
    return gaps;
}

ProgramEditions editions_of(const LoanProgram& program, const RuleDays& days) {
    ProgramEditions editions;
    for (std::size_t i = 0; i < rule_count; ++i) {
        editions.rules[i] = edition_on(program.rules[i], days);
    }
    editions.ratios = edition_on(program.ratios, days);
    editions.residual_income = edition_on(program.residual_income, days);
    return editions;
}

std::vector<const BandTable*> adjustments_on(const RateSheet& sheet, const std::string& program,
                                             const RuleDays& days, ListGaps& gaps) {
    std::vector<const BandTable*> found;
    for (const Adjustment& adjustment : sheet.adjustments) {
        const auto editions = editions_of_adjustment(sheet, program, adjustment);
        const bool first = !editions.empty() && editions.front() == &adjustment.table;
        if (!first) continue; // meant for others, or looked at before
        Edition<BandTable> edition;
        for (const BandTable* table : editions) {
            edition.consider(*table, days.of(*table));
            if (table->in_force(days.of(*table))) found.push_back(table);
        }
        gaps.note(RuleList::points_adjustment, edition);
        if (edition.continues()) found.push_back(edition.rule());
    }
    return found;
}

std::vector<Ending> endings_of(const LoanProgram& program, Date day, Date by) {
    Ends ends(day, by);
    for (std::size_t i = 0; i < rule_count; ++i) {
        ends.look_at(list_of(static_cast<Rule>(i)), program.rules[i]);
    }
    ends.look_at(RuleList::ratios, program.ratios);
    ends.look_at(RuleList::residual_income, program.residual_income);
    return ends.found;
}

std::vector<Ending> endings_of(const RateSheet& sheet, Date day, Date by) {
    Ends ends(day, by);
    std::map<std::string, std::vector<BandTable>> adjustments;
    for (const Adjustment& adjustment : sheet.adjustments) {
        adjustments[adjustment.table.name].push_back(adjustment.table);
    }
    for (const auto& [name, tables] : adjustments) {
        ends.look_at(RuleList::points_adjustment, tables, name);
    }
    ends.look_at(RuleList::mi_factors, sheet.mortgage_insurance);
    ends.look_at(RuleList::single_premium, sheet.single_premium);
    return ends.found;
}

std::vector<Ending> endings_of(const Place& place, Date day, Date by) {
    Ends ends(day, by);
    ends.look_at(RuleList::homeowner, std::vector{place.homeowner});
    return ends.found;
}

} // namespace quoin
