// Saying why something cannot be had, and what would do instead.
#include <quoin/words/reasons.hpp>

#include "parts.hpp"
#include "reasons.hpp"
#include <quoin/words/joined.hpp>
#include <quoin/words/measures.hpp>

namespace quoin {
namespace {

std::string lot_too_small(const WhyNot& why, const Catalogue& say) {
    const SaidMeasure measure = said_measure(why.names.front(), say);
    return say.reasons.why_not.lot_too_small(measure.name, grouped(why.least), measure.unit);
}

} // namespace

std::string words_of(const WhyNot& why, const Catalogue& catalogue) {
    using Kind = WhyNot::Kind;
    const ReasonWords& say = catalogue.reasons;
    const WhyNotWords& words = say.why_not;
    const auto any = [&] { return joined(why.names, Joint::either, catalogue); };
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
        return words.only_on_grades(joined(grades, Joint::either, catalogue));
    }
    case Kind::lot_too_small:
        return lot_too_small(why, catalogue);
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
        return words.one_of(joined(wanted.names));
    case Kind::any_of:
        return joined(wanted.names, Joint::either, say);
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
