// Rendering the wishes that fit within a month and the cash.
#include <quoin/answers/fit.hpp>
#include <quoin/render/answers.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <quoin/render/cautions.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

#include "scenario_table.hpp"

namespace quoin {
namespace {

std::string name_text(const FitWish& wish) {
    std::string text = wish.name + (wish.level.empty() ? "" : ": " + wish.level);
    if (wish.quantity != Decimal::whole(1)) {
        text += ", " + grouped(wish.quantity) +
                (wish.unit == Unit::each ? "" : " " + std::string(name_of(wish.unit)));
    }
    return text;
}

std::string place_text(const FitWish& wish) {
    return fmt::format("{}{}", wish.rank, wish.must ? ", must" : "");
}

/// "over the month by $12.00 and the cash by $3.00"; empty where neither is.
std::string over_text(Money month, Money cash) {
    std::string text;
    if (!month.is_zero()) text += "the month by " + dollars(month);
    if (!cash.is_zero()) text += (text.empty() ? "" : " and ") + ("the cash by " + dollars(cash));
    return text.empty() ? text : "over " + text;
}

std::string reason_text(const FitLeftOut& left) {
    switch (left.reason) {
    case FitReason::rule:
        if (left.added) {
            return fmt::format("would take the place of {}, which is worth more",
                               joined(left.instead));
        }
        return left.rule;
    case FitReason::loan: {
        std::string text;
        for (const Refusal& refusal : left.added->refusals) {
            text += (text.empty() ? "" : "; ") + words(refusal);
        }
        return "the loan could not be had: " + text;
    }
    case FitReason::limits:
        break;
    }
    std::string text = over_text(left.over_monthly, left.over_cash);
    if (!left.instead.empty()) text += "; instead of " + joined(left.instead);
    return text;
}

Table wishes_table() {
    return Table({{"", Align::left, 48, 44},
                  {"rank", Align::left, 8, 7},
                  {"worth", Align::right, 9, 6},
                  {"price", Align::right, 12, 11},
                  {"a month", Align::right, 10, 10},
                  {"cash", Align::right, 12, 11}});
}

void add_chosen(const FitHome& home, Table& table) {
    for (const FitWish& wish : home.chosen) {
        table.row({name_text(wish), place_text(wish), wish.worth.text(), dollars(wish.price)});
    }
    for (const FitAlong& along : home.along) {
        table.row({along.name, "needed", "", dollars(along.price)});
    }
    for (const FitWish& wish : home.held) {
        table.row({name_text(wish), place_text(wish), "", "in the home"});
    }
    if (home.chosen.empty() && home.held.empty()) table.row({"no wish"});
}

void add_left_out(const FitLeftOut& left, Table& table) {
    const bool figures = left.added && left.added->available();
    table.row({name_text(left.wish), place_text(left.wish), left.wish.worth.text(),
               left.added ? signed_dollars(left.price) : "",
               figures ? signed_dollars(left.added->per_month) : "",
               figures ? signed_dollars(left.added->cash) : ""});
    if (!left.along.empty()) table.remark("with " + joined(left.along) + ", which it needs", 86);
    table.remark(reason_text(left), 86);
}

std::string raises_text(const FitNext& next) {
    std::string text;
    if (!next.raise_monthly.is_zero())
        text += "a month of " + dollars(next.raise_monthly) + " more";
    if (!next.raise_cash.is_zero()) {
        text += (text.empty() ? "" : " and ") + (dollars(next.raise_cash) + " more cash");
    }
    return text;
}

std::string next_text(const FitNext& next) {
    std::string text =
        fmt::format("To have {} as well: {}", name_text(next.wish), raises_text(next));
    if (!next.can_be_chosen) {
        return text + (next.proven ? "; no choice within the limits holds it."
                                   : "; the search found no choice within the limits with it.");
    }
    text += fmt::format("; or, within the limits, give up {}",
                        next.give_up.empty() ? "nothing of the above" : joined(next.give_up));
    if (!next.gained.empty()) text += fmt::format(" (and {} fits then)", joined(next.gained));
    return text + fmt::format(": worth {} in all{}.", next.worth.text(),
                              next.proven ? "" : ", the best found when the search stopped");
}

/// "worth 14, proven the most (231 nodes)".
std::string worth_text(const FitHome& home) {
    if (home.proven) {
        return fmt::format("worth {}: proven, no choice within the limits is worth more{} ({} "
                           "looked into)",
                           home.worth.text(),
                           home.cheapest ? ", none worth as much costs less a month"
                                         : "; another worth as much may cost less",
                           grouped(Decimal::whole(home.nodes)));
    }
    const Decimal gap = home.most - home.worth;
    std::string more = "none is worth more than " + home.most.text();
    if (home.worth > Decimal{}) {
        const Decimal share = Decimal::billionths(multiply_divide(
            gap.billionths(), 100 * Decimal::one, home.worth.billionths(), Rounding::up));
        more += fmt::format(" ({} more at most)", percent_text(share, 2));
    }
    return fmt::format("worth {}: the best of {} looked into before the search stopped; {}",
                       home.worth.text(), grouped(Decimal::whole(home.nodes)), more);
}

std::string what_stays(const FitHome& home) {
    const bool musts = std::any_of(home.chosen.begin(), home.chosen.end(),
                                   [](const FitWish& wish) { return wish.must; });
    return musts ? "what is selected and the must-haves" : "what is selected";
}

/// By how much the nearest home misses, and how sure that is.
std::string nearest_text(const FitHome& home) {
    const FitMiss& miss = *home.miss;
    std::string text = fmt::format("the nearest home with {} is {}. ", what_stays(home),
                                   over_text(home.over_monthly, home.over_cash));
    if (!miss.proven) {
        return text + "Not proven: the search stopped, and another may be over by less.";
    }
    if (miss.in_one_home) {
        const bool either = !home.over_monthly.is_zero() && !home.over_cash.is_zero();
        return text + (either ? "Proven: none is over the month, or over the cash, by less."
                              : "Proven: none is over by less.");
    }
    const std::string other = miss.least_cash.is_zero() ? "within the cash"
                                                        : fmt::format("over the cash by only {}",
                                                                      dollars(miss.least_cash));
    return text + fmt::format("Proven: none is over the month by less. Another is {}, but over the "
                              "month by more.",
                              other);
}

std::string misses(const FitHome& home) {
    if (!home.barred.empty()) return "Nothing can be chosen: " + home.barred + ".\n";
    if (!home.scenario) {
        return home.proven ? "Nothing fits. The search stopped before it found the nearest home.\n"
                           : "The search stopped before it found a home: whether one fits is not "
                             "known.\n";
    }
    if (!home.miss) {
        return fmt::format("Nothing fits: {} with {}{}.\n{}",
                           home.proven ? "this loan cannot be had for any home"
                                       : "no home was found",
                           what_stays(home), home.proven ? "" : " for which this loan can be had",
                           refusal_lines({*home.scenario}));
    }
    return fmt::format("{}: {}\n",
                       home.proven ? "Nothing fits" : "The search stopped before one that fits",
                       nearest_text(home));
}

std::string figures_text(const FitHome& home) {
    const ScenarioAnswer& scenario = *home.scenario;
    if (!scenario.available()) return {};
    return paragraph(fmt::format("price {}, {} a month, {} in cash: {}", dollars(home.price),
                                 dollars(scenario.monthly.total()), dollars(scenario.cash.needed()),
                                 closing_words(scenario.cash)),
                     "", "  ") +
           paragraph(terms_line(scenario.terms), "  ");
}

std::string home_text(const FitHome& home) {
    std::string out;
    if (!home.fits) out += paragraph(misses(home), "", "  ");
    if (!home.scenario) return out;
    out += figures_text(home);
    if (home.fits) out += paragraph(worth_text(home), "", "  ");
    if (!home.incentives_lost.empty()) {
        out += "not given on this lot: " + joined(home.incentives_lost) + "\n";
    }
    if (!home.fits && home.chosen.empty() && home.along.empty()) return out;
    Table table = wishes_table();
    table.gap();
    table.title(home.fits ? "chosen" : "with");
    add_chosen(home, table);
    if (!home.left_out.empty()) {
        table.gap();
        table.title("left out: what each would add to the above, and why it did not fit");
    }
    for (const FitLeftOut& left : home.left_out) add_left_out(left, table);
    out += "\n" + table.text();
    if (home.next) out += "\n" + paragraph(next_text(*home.next), "", "  ");
    return out;
}

std::string nothing_text(const FitHome& home) {
    const bool sure = home.proven || (home.miss && home.miss->proven);
    return sure ? "nothing fits" : "none found that fits";
}

std::string lots_text(const FitScenario& scenario) {
    Table table({{"lot", Align::left, 8, 5},
                 {"worth", Align::right, 9, 8},
                 {"price", Align::right, 12, 11},
                 {"a month", Align::right, 10, 10},
                 {"cash", Align::right, 12, 11},
                 {"", Align::left, 40, 10}});
    for (const FitHome& home : scenario.homes) {
        const bool figures = home.scenario && home.scenario->available();
        const std::string note = !home.barred.empty() ? "nothing can be chosen"
                                 : !home.fits         ? nothing_text(home)
                                 : home.proven        ? ""
                                                      : "up to " + home.most.text();
        table.row({home.lot, home.fits ? home.worth.text() : "", figures ? dollars(home.price) : "",
                   figures ? dollars(home.scenario->monthly.total()) : "",
                   figures ? dollars(home.scenario->cash.needed()) : "", note});
        table.remark(home.barred, 86);
    }
    return table.text();
}

} // namespace

std::string text_of(const FitAnswer& answer, const Catalogue& say) {
    std::string out = heading_text(answer.heading, "Which wishes fit", say);
    out += fmt::format("within {} a month and {} of cash in all\n", dollars(answer.limits.monthly),
                       dollars(answer.limits.cash));
    for (const FitScenario& scenario : answer.scenarios) {
        out += "\n" + scenario.terms.name + "\n";
        const FitHome& best = scenario.homes[scenario.best];
        if (answer.lots) {
            out += lots_text(scenario) + fmt::format("\nOn lot {}:\n", best.lot);
        }
        out += home_text(best);
    }
    Cautions notes = with_loan_cautions(
        {{CautionCode::worth_of_wishes,
          "A wish is worth its weight, or n + 1 less its place among the n wishes by rank. What "
          "was left out is figured as the difference of two whole quotes. Limits are on the "
          "settled month and on all the cash, deposits among it."}},
        answer.heading, terms_of(answer.scenarios));
    notes.push_back(agent_caution(say));
    return out + footing_text(notes);
}

} // namespace quoin
