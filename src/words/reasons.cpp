// Saying why something cannot be had, and what would do instead.
#include <quoin/words/reasons.hpp>

#include <algorithm>

#include "parts.hpp"
#include "reasons.hpp"

namespace quoin {
namespace {

std::string in_a_row(const std::vector<std::string>& names) {
    std::string row;
    for (const std::string& name : names) row += (row.empty() ? "" : ", ") + name;
    return row;
}

/// "1, 2 or 3"
std::string any_of(std::vector<std::string> names, const ReasonWords& say) {
    if (names.size() < 2) return in_a_row(names);
    const std::string last = std::move(names.back());
    names.pop_back();
    return say.either(in_a_row(names), last);
}

/// "rear setback" and " ft" of rear_setback_ft: a measure's name ends in its unit.
std::string lot_too_small(std::string measure, Decimal least, const ReasonWords& say) {
    std::string unit;
    for (const std::string_view suffix : {"_sq_ft", "_ft"}) {
        if (!measure.ends_with(suffix)) continue;
        unit = suffix;
        measure.resize(measure.size() - suffix.size());
        break;
    }
    std::replace(measure.begin(), measure.end(), '_', ' ');
    std::replace(unit.begin(), unit.end(), '_', ' ');
    return say.why_not.lot_too_small(measure, least.text(), unit);
}

} // namespace

std::string words_of(const WhyNot& why, const Catalogue& catalogue) {
    using Kind = WhyNot::Kind;
    const ReasonWords& say = catalogue.reasons;
    const WhyNotWords& words = say.why_not;
    const auto any = [&] { return any_of(why.names, say); };
    switch (why.kind) {
    case Kind::not_on_plan:
        return words.not_on_plan();
    case Kind::only_on_elevations:
        return words.only_on_elevations(any());
    case Kind::only_on_lots:
        return words.only_on_lots(any());
    case Kind::only_on_grades: {
        std::vector<std::string> grades;
        for (const Grade grade : why.grades) grades.push_back(catalogue.parts.grade(grade));
        return words.only_on_grades(any_of(std::move(grades), say));
    }
    case Kind::lot_too_small:
        return lot_too_small(why.names.front(), why.least, say);
    case Kind::past_cutoff:
        return words.past_cutoff(any());
    case Kind::needs:
        return words.needs(any());
    case Kind::excludes:
        return words.excludes(any());
    case Kind::one_of_kind:
        return words.one_of_kind(any());
    case Kind::two_forms:
        return words.two_forms();
    case Kind::better_in_package:
        return words.better_in_package(any());
    case Kind::another_choice:
        return words.another_choice();
    case Kind::selection_would_go:
        return words.selection_would_go(any());
    case Kind::outweighed:
        return words.outweighed();
    case Kind::not_for_use:
        return words.not_for_use();
    case Kind::not_for_plan:
        return words.not_for_plan();
    case Kind::not_for_lot:
        return words.not_for_lot();
    case Kind::contract_too_late:
        return words.contract_too_late(why.until.value());
    case Kind::closing_too_late:
        return words.closing_too_late(why.until.value());
    case Kind::other_lender:
        return words.other_lender(any());
    case Kind::takes_all:
        return words.takes_all();
    }
    return {};
}

std::string words_of(const std::optional<WhyNot>& why, const Catalogue& say) {
    return why ? words_of(*why, say) : std::string{};
}

std::string words_of(const Wanted& wanted, const Catalogue& say) {
    using Kind = Wanted::Kind;
    const WantedWords& words = say.reasons.wanted;
    const std::string least = wanted.least.text();
    const std::string most = wanted.most.text();
    const std::string& such = wanted.such;
    switch (wanted.kind) {
    case Kind::amount_above_zero:
        return words.amount_above_zero(such);
    case Kind::amount_not_below_zero:
        return words.amount_not_below_zero(such);
    case Kind::amount_in_range:
        return words.amount_in_range(least, most, such);
    case Kind::amount_under_price:
        return words.amount_under_price(such);
    case Kind::amount_to_spend:
        return words.amount_to_spend();
    case Kind::dollars_in_range:
        return words.dollars_in_range(grouped(wanted.least), grouped(wanted.most), such);
    case Kind::dollars_a_month:
        return words.dollars_a_month(such);
    case Kind::gross_dollars_a_month:
        return words.gross_dollars_a_month(such);
    case Kind::whole_number:
        return words.whole_number(least, most);
    case Kind::whole_months:
        return words.whole_months(least, most);
    case Kind::whole_years:
        return words.whole_years(least, most);
    case Kind::percent:
        return words.percent(least, most);
    case Kind::percent_such:
        return words.percent_such(least, most, such);
    case Kind::percentage_points:
        return words.percentage_points(least, most, such);
    case Kind::yearly_percent:
        return words.yearly_percent(least, most, such);
    case Kind::yearly_rate_above:
        return words.yearly_rate_above(least, most, such);
    case Kind::day:
        return words.day(such);
    case Kind::one_of:
        return words.one_of(in_a_row(wanted.names));
    case Kind::any_of:
        return any_of(wanted.names, say.reasons);
    case Kind::adjustable_scenario:
        return words.adjustable_scenario();
    case Kind::loan_rate_and_months:
        return words.loan_rate_and_months();
    case Kind::quantity_in_steps:
        return words.quantity_in_steps(least, most, wanted.step.text());
    case Kind::quantity_of_the_book:
        return words.quantity_of_the_book();
    case Kind::name_with_ending:
        return words.name_with_ending(such);
    }
    return {};
}

} // namespace quoin
