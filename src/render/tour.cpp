// Rendering the tour of a home as text.
#include <quoin/answers/tour.hpp>
#include <quoin/render/answers.hpp>

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "own_cautions.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

constexpr std::size_t name_width = 52;

std::string state_text(const TourOption& item, const TourForm& form) {
    if (form.state == TourState::chosen && item.agreed) return "agreed";
    return std::string(name_of(form.state));
}

/// "$4,300.00", "no cost", or nothing where the plan is not offered it.
std::string price_text(const TourForm& form) {
    if (!form.price || form.state == TourState::held) return {};
    if (!form.price->is_zero()) return dollars(*form.price);
    return form.state == TourState::barred ? "" : "no cost";
}

void add_form(const TourOption& item, const TourForm& form, Table& table) {
    std::string name = form.name.empty() ? item.name : "  " + form.name;
    if (form.name.empty() && item.work.any()) name += " *";
    std::string month;
    std::string cash;
    if (form.touch && form.touch->added.available() && item.kind != OptionKind::choice) {
        month = signed_dollars(form.touch->added.per_month);
        cash = signed_dollars(form.touch->added.cash);
    }
    const auto lines = wrapped(name, name_width - 2);
    table.row({"  " + lines.front(), state_text(item, form), price_text(form), month, cash});
    for (std::size_t i = 1; i < lines.size(); ++i) table.row({"    " + lines[i]});
    if (form.state == TourState::barred) table.remark(form.why, 84);
    if (form.state == TourState::held) table.remark("in " + form.why, 84);
    if (!form.touch) return;
    if (!form.touch->along.empty()) {
        table.remark((form.touch->takes_out ? "and with it " : "with ") + joined(form.touch->along),
                     84);
    }
    if (!form.touch->instead.empty()) table.remark("instead of " + joined(form.touch->instead), 84);
}

/// What has to be known of an option beside its price.
std::string facts_of(const TourOption& item) {
    std::string text;
    const auto add = [&](const std::string& words) { text += (text.empty() ? "" : "; ") + words; };
    if (item.wish > 0) add(fmt::format("wish {}", item.wish));
    if (item.budget) add(dollars(*item.budget) + " is included");
    if (item.spend) add("to spend: " + dollars(*item.spend));
    if (item.kind != OptionKind::allowance && item.quantity && item.quantity->now != Decimal{}) {
        const TourQuantity& counted = *item.quantity;
        const std::string unit =
            counted.unit == Unit::each ? " of them" : " " + std::string(name_of(counted.unit));
        add(grouped(counted.now) + unit);
        if (counted.from == Quantity::From::buyer) add(counted.limits);
    }
    if (!item.parts.empty()) add("brings " + joined(item.parts));
    if (!item.cutoff.empty()) add("choose before: " + item.cutoff);
    return text;
}

void add_option(const TourOption& item, Table& table) {
    if (item.forms.empty()) return;
    if (!item.forms.front().name.empty()) {
        table.title("  " + item.name + (item.work.any() ? " *" : ""));
    }
    for (const TourForm& form : item.forms) add_form(item, form, table);
    table.remark(facts_of(item), 84);
    table.remark(item.note, 84);
}

void add_area(const TourArea& area, Table& table) {
    table.gap();
    table.title(area.name);
    for (const std::string& text : area.included) {
        const auto lines = wrapped(text, 88);
        table.title("  + " + lines.front());
        for (std::size_t i = 1; i < lines.size(); ++i) table.title("    " + lines[i]);
    }
    for (const TourOption& item : area.options) add_option(item, table);
    for (const Request& request : area.requests) {
        table.title("  asked for outside the price book: " + request.text);
    }
}

/// Where an incentive goes, or what it could go to, or why it is not given.
std::string uses_text(const IncentiveOffer& offer) {
    if (!offer.why_not.empty()) return offer.why_not;
    std::vector<std::string> uses;
    for (const IncentiveUsed& used : offer.used) {
        uses.push_back(fmt::format("{} towards {}", dollars(used.given), name_of(used.use)));
    }
    if (!uses.empty()) return fmt::format("used: {}", fmt::join(uses, ", "));
    for (const IncentiveUse use : offer.incentive.uses) uses.emplace_back(name_of(use));
    return fmt::format("not used; may go towards {}", fmt::join(uses, ", "));
}

std::string incentives_text(const TourAnswer& answer) {
    if (answer.incentives.empty()) return {};
    std::string out = "\nWhat the builder gives\n";
    for (const IncentiveOffer& offer : answer.incentives) {
        out += paragraph(
            fmt::format("{}, {}: {}", offer.incentive.name, dollars(offer.whole), uses_text(offer)),
            "  ", "    ");
        if (!offer.incentive.conditions.empty())
            out += paragraph(offer.incentive.conditions, "    ");
    }
    return out;
}

} // namespace

namespace {

bool needs_trades(const TourArea& area) {
    return std::any_of(area.options.begin(), area.options.end(),
                       [](const TourOption& item) { return item.work.any(); });
}

} // namespace

Cautions cautions_of(const TourAnswer& answer, const Catalogue& say) {
    Cautions notes = with_loan_cautions(
        {{CautionCode::touch_is_difference,
          "What a touch adds a month is the difference of two whole quotes, rounded as they "
          "are."}},
        answer.heading, {answer.scenario.terms});
    if (std::any_of(answer.areas.begin(), answer.areas.end(), needs_trades))
        notes.push_back(work_caution(say));
    notes.push_back(agent_caution(say));
    return notes;
}

std::string text_of(const TourAnswer& answer, const Catalogue& say) {
    const ScenarioTerms& terms = answer.scenario.terms;
    std::string out = heading_text(answer.heading, "The home, area by area", say);
    out += "contract price " + dollars(answer.contract_price) + "\n";
    if (answer.scenario.available()) {
        out += paragraph(fmt::format("{}: {} a month, {}. {}", terms.name,
                                     dollars(answer.scenario.monthly.total()),
                                     closing_words(answer.scenario.cash), terms_line(terms)),
                         "", "  ");
    } else {
        out += paragraph(refused_words(terms.name, answer.scenario.refusals.front()), "", "  ");
    }
    out += "lines with + come with your plan; a month and cash are what taking it, or taking it "
           "out, changes\n";
    Table table({{"", Align::left, name_width + 2, name_width},
                 {"", Align::left, 14, 13},
                 {"price", Align::right, 12, 11},
                 {"a month", Align::right, 11, 9},
                 {"cash in all", Align::right, 11, 9}});
    for (const TourArea& area : answer.areas) add_area(area, table);
    out += "\n" + table.text() + incentives_text(answer);
    return out + footing_text(cautions_of(answer, say));
}

} // namespace quoin
