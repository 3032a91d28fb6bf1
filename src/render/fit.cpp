// Rendering the wishes that fit within a month and the cash.
#include <quoin/answers/fit.hpp>
#include <quoin/render/answers.hpp>

#include <algorithm>

#include "fit_words.hpp"
#include "own_cautions.hpp"
#include "scenario_table.hpp"
#include "words/fit.hpp"
#include "words/parts.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>
#include <quoin/words/reasons.hpp>

namespace quoin {
namespace {

/// Names that can have commas of their own.
std::string named_apart(const std::vector<std::string>& names) { return joined(names, "; "); }

std::string name_text(const FitWish& wish, const Catalogue& say) {
    const std::string name = wish.level.empty() ? wish.name : say.fit.named(wish.name, wish.level);
    if (wish.quantity == Decimal::whole(1)) return name;
    const std::string unit = wish.unit == Unit::each ? "" : " " + say.parts.unit(wish.unit);
    return say.fit.how_many(name, grouped(wish.quantity), unit);
}

std::string place_text(const FitWish& wish, const FitWords& say) {
    return wish.must ? say.must(wish.rank) : std::to_string(wish.rank);
}

/// How a pair of amounts is said, of which one or both may be nothing.
struct MonthAndCash {
    const Phrase<Money>& month;
    const Phrase<Money>& cash;
    const Phrase<Money, Money>& both;

    /// Empty where both are nothing.
    [[nodiscard]] std::string text(Money a_month, Money in_cash) const {
        if (a_month.is_zero()) return in_cash.is_zero() ? std::string() : cash(in_cash);
        return in_cash.is_zero() ? month(a_month) : both(a_month, in_cash);
    }
};

std::string over_text(Money month, Money cash, const FitWords& say) {
    return MonthAndCash{say.over_month, say.over_cash, say.over_both}.text(month, cash);
}

std::string reason_text(const FitLeftOut& left, const Catalogue& say) {
    switch (left.reason) {
    case FitReason::rule:
        return left.added ? say.fit.takes_place(named_apart(instead_words(left, say)))
                          : words_of(left.rule, say);
    case FitReason::loan:
        return say.fit.loan_refused(words(left.added->refusals, say));
    case FitReason::limits:
        break;
    }
    const std::string over = over_text(left.over_monthly, left.over_cash, say.fit);
    const std::vector<std::string> instead = instead_words(left, say);
    return instead.empty() ? over : say.fit.instead(over, named_apart(instead));
}

Table wishes_table(const FitWords& say) {
    return Table({{"", Align::left, 48, 38},
                  {say.rank(), Align::left, 8, 7},
                  {say.worth(), Align::right, 9, 6},
                  {say.price(), Align::right, 12, 11},
                  {say.month(), Align::right, 10, 10},
                  {say.cash(), Align::right, 12, 11}});
}

void add_chosen(const FitHome& home, Table& table, const Catalogue& catalogue) {
    const FitWords& say = catalogue.fit;
    for (const FitWish& wish : home.chosen) {
        table.row({name_text(wish, catalogue), place_text(wish, say), wish.worth.text(),
                   dollars(wish.price)});
    }
    for (const FitAlong& along : home.along) {
        table.row({along.name, say.needed(), "", dollars(along.price)});
    }
    for (const FitWish& wish : home.held) {
        table.row({name_text(wish, catalogue), place_text(wish, say), "", say.in_the_home()});
    }
    if (home.chosen.empty() && home.held.empty()) table.row({say.no_wish()});
}

void add_left_out(const FitLeftOut& left, Table& table, const Catalogue& say) {
    const bool figures = left.added && left.added->available();
    table.row({name_text(left.wish, say), place_text(left.wish, say.fit), left.wish.worth.text(),
               left.added ? signed_dollars(left.price) : "",
               figures ? signed_dollars(left.added->per_month) : "",
               figures ? signed_dollars(left.added->cash) : ""});
    if (!left.along.empty()) table.remark(say.fit.along(named_apart(left.along)), 86);
    table.remark(reason_text(left, say), 86);
}

std::string next_text(const FitNext& next, const Catalogue& catalogue) {
    const FitWords& say = catalogue.fit;
    const std::string wish = name_text(next.wish, catalogue);
    const std::string raises = MonthAndCash{say.more_month, say.more_cash, say.more_of_both}.text(
        next.raise_monthly, next.raise_cash);
    if (!next.can_be_chosen) {
        return (next.proven ? say.next_nowhere : say.next_not_found)(wish, raises);
    }
    return say.next(wish, raises,
                    next.give_up.empty() ? say.nothing_chosen() : named_apart(next.give_up),
                    next.gained.empty() ? std::string() : say.gained(named_apart(next.gained)),
                    next.worth.text(), next.proven ? std::string() : say.next_unproven());
}

/// "Worth 14. Proven: no choice within your limits is worth more ... Choices looked into: 231."
std::string worth_text(const FitHome& home, const FitWords& say) {
    const std::string nodes = grouped(Decimal::whole(home.nodes));
    if (home.proven) {
        return say.proven(home.worth.text(), home.cheapest ? say.cheapest() : say.perhaps_cheaper(),
                          nodes);
    }
    std::string more;
    if (home.worth > Decimal{}) {
        const Decimal gap = home.most - home.worth;
        const Decimal share = Decimal::billionths(multiply_divide(
            gap.billionths(), 100 * Decimal::one, home.worth.billionths(), Rounding::up));
        more = say.more_at_most(percent_text(share, 2));
    }
    return say.best_so_far(home.worth.text(), nodes, home.most.text(), more);
}

std::string what_stays(const FitHome& home, const FitWords& say) {
    const bool musts = std::any_of(home.chosen.begin(), home.chosen.end(),
                                   [](const FitWish& wish) { return wish.must; });
    return musts ? say.selected_and_musts() : say.selected();
}

/// How sure it is that no home misses by less.
std::string sure_text(const FitHome& home, const FitWords& say) {
    const FitMiss& miss = *home.miss;
    if (!miss.proven) return say.nearest_unproven();
    if (miss.in_one_home) {
        const bool either = !home.over_monthly.is_zero() && !home.over_cash.is_zero();
        return either ? say.neither_by_less() : say.none_by_less();
    }
    return miss.least_cash.is_zero() ? say.other_within_cash()
                                     : say.other_over_cash(miss.least_cash);
}

Blocks misses(const FitHome& home, const Catalogue& catalogue) {
    const FitWords& say = catalogue.fit;
    const auto told = [](const std::string& text) { return paragraph(text, "", "  ") + "\n"; };
    if (home.barred) return told(say.barred(words(*home.barred, catalogue)));
    if (!home.scenario) {
        return told(home.proven ? say.stopped_before_nearest() : say.stopped_before_any());
    }
    const std::string stays = what_stays(home, say);
    if (!home.miss) {
        return paragraph((home.proven ? say.loan_for_no_home : say.loan_not_found)(stays), "",
                         "  ") +
               refusal_lines({*home.scenario}, catalogue);
    }
    const std::string over = over_text(home.over_monthly, home.over_cash, say);
    return told(
        (home.proven ? say.nearest : say.nearest_of_found)(stays, over, sure_text(home, say)));
}

Blocks figures_text(const FitHome& home, const Catalogue& say) {
    const ScenarioAnswer& scenario = *home.scenario;
    if (!scenario.available()) return {};
    return paragraph(say.fit.figures(home.price, scenario.monthly.total(), scenario.cash.needed(),
                                     closing_words(scenario.cash, say)),
                     "", "  ") +
           paragraph(terms_line(scenario.terms, say), "  ");
}

Blocks home_table(const FitHome& home, const Catalogue& say) {
    Table table = wishes_table(say.fit);
    table.gap();
    table.title(home.fits ? say.fit.chosen() : say.fit.with());
    add_chosen(home, table, say);
    if (!home.left_out.empty()) {
        table.gap();
        table.title(say.fit.left_out());
    }
    for (const FitLeftOut& left : home.left_out) add_left_out(left, table, say);
    return table;
}

Blocks home_text(const FitHome& home, const Catalogue& say) {
    Blocks out;
    if (!home.fits) out += misses(home, say);
    if (!home.scenario) return out;
    out += figures_text(home, say);
    if (home.fits) out += paragraph(worth_text(home, say.fit), "", "  ");
    if (!home.incentives_lost.empty()) {
        out += say.fit.incentives_lost(joined(home.incentives_lost)) + "\n";
    }
    if (!home.fits && home.chosen.empty() && home.along.empty()) return out;
    out += "\n" + home_table(home, say);
    if (home.next) out += "\n" + paragraph(next_text(*home.next, say), "", "  ");
    return out;
}

/// What there is to say of a lot in a few words.
std::string lot_note(const FitHome& home, const FitWords& say) {
    if (home.barred) return say.barred_briefly();
    if (home.fits) return home.proven ? std::string() : say.worth_at_most(home.most.text());
    const bool sure = home.proven || (home.miss && home.miss->proven);
    return sure ? say.nothing_fits() : say.none_found();
}

Blocks lots_text(const FitScenario& scenario, const Catalogue& catalogue) {
    const FitWords& say = catalogue.fit;
    Table table({{say.lot(), Align::left, 8, 5},
                 {say.worth(), Align::right, 9, 8},
                 {say.price(), Align::right, 12, 11},
                 {say.month(), Align::right, 10, 10},
                 {say.cash(), Align::right, 12, 11},
                 {"", Align::left, 40, 10}});
    for (const FitHome& home : scenario.homes) {
        const bool figures = home.scenario && home.scenario->available();
        table.row({home.lot, home.fits ? home.worth.text() : "", figures ? dollars(home.price) : "",
                   figures ? dollars(home.scenario->monthly.total()) : "",
                   figures ? dollars(home.scenario->cash.needed()) : "", lot_note(home, say)});
        if (home.barred) table.remark(words(*home.barred, catalogue), 86);
    }
    return table;
}

} // namespace

Blocks blocks_of(const FitAnswer& answer, const Catalogue& say) {
    Blocks out = brief_of(answer, say, Estimate::below_all) + "\n" +
                 heading_text(answer.heading, say.fit.title(), say);
    out += say.fit.within(answer.limits.monthly, answer.limits.cash) + "\n";
    for (const FitScenario& scenario : answer.scenarios) {
        out += titled(scenario.terms.name);
        const FitHome& best = scenario.homes[scenario.best];
        if (answer.lots) {
            out += lots_text(scenario, say) + titled(say.fit.on_lot(best.lot));
        }
        out += home_text(best, say);
    }
    return out + footing_text(cautions_of(answer, say));
}

} // namespace quoin
