// Rendering the tour of a home as text.
#include <quoin/answers/tour.hpp>
#include <quoin/render/answers.hpp>

#include <algorithm>

#include "own_cautions.hpp"
#include "words/adds.hpp"
#include "words/parts.hpp"
#include "words/quote.hpp"
#include "words/tour.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>
#include <quoin/words/reasons.hpp>

namespace quoin {
namespace {

constexpr std::size_t name_width = 52;

std::string state_text(const TourOption& item, const TourForm& form, const Catalogue& say) {
    if (form.state == TourState::chosen && item.agreed) return say.tour.agreed();
    return say.tour.state(form.state);
}

/// "$4,300.00", "no cost", or nothing where the plan is not offered it.
std::string price_text(const TourForm& form, const Catalogue& say) {
    if (!form.price || form.state == TourState::held) return {};
    if (!form.price->is_zero()) return dollars(*form.price);
    return form.state == TourState::barred ? std::string() : say.quote.no_cost();
}

/// What comes or goes with a touch, and what it replaces.
void add_company(const TourTouch& touch, Table& table, const AddsWords& say) {
    const auto& with = touch.takes_out ? say.and_with : say.with;
    if (!touch.along.empty()) table.remark(with(joined(touch.along)), 84);
    if (!touch.instead.empty()) table.remark(say.instead_of(joined(touch.instead)), 84);
}

void add_office_note(const std::string& note, Table& table, const Catalogue& say) {
    if (!note.empty()) table.remark(say.parts.office_note(note), 84);
}

void add_form(const TourOption& item, const TourForm& form, Table& table, const Catalogue& say) {
    std::string name = form.name.empty() ? item.name : "  " + form.name;
    if (form.name.empty() && item.work.any()) name += " *";
    std::string month;
    std::string cash;
    if (form.touch && form.touch->added.available() && item.kind != OptionKind::choice) {
        month = signed_dollars(form.touch->added.per_month);
        cash = signed_dollars(form.touch->added.cash);
    }
    table.row({"  " + name, state_text(item, form, say), price_text(form, say), month, cash});
    if (form.state == TourState::barred) table.remark(words_of(form.why_not, say), 84);
    if (form.state == TourState::held) table.remark(say.tour.in_package(form.package), 84);
    add_office_note(form.office_note, table, say);
    if (form.touch) add_company(*form.touch, table, say.adds);
}

/// What has to be known of an option beside its price.
std::string facts_of(const TourOption& item, const Catalogue& say) {
    std::string text;
    const auto add = [&](const std::string& words) { text += (text.empty() ? "" : "; ") + words; };
    if (item.wish > 0) add(say.adds.wish(item.wish));
    if (item.budget) add(say.tour.included(*item.budget));
    if (item.spend) add(say.tour.to_spend(*item.spend));
    if (item.kind != OptionKind::allowance && item.quantity && item.quantity->now != Decimal{}) {
        const TourQuantity& counted = *item.quantity;
        add(quantity_text(counted.now, counted.unit, say));
        if (counted.from == Quantity::From::buyer) add(words_of(counted.limits(), say));
    }
    if (!item.parts.empty()) add(say.tour.brings(joined(item.parts)));
    if (!item.cutoff.empty()) add(say.tour.before(item.cutoff));
    return text;
}

void add_option(const TourOption& item, Table& table, const Catalogue& say) {
    if (item.forms.empty()) return;
    if (!item.forms.front().name.empty()) {
        table.title("  " + item.name + (item.work.any() ? " *" : ""));
    }
    for (const TourForm& form : item.forms) add_form(item, form, table, say);
    table.remark(facts_of(item, say), 84);
    table.remark(item.note, 84);
    add_office_note(item.office_note, table, say);
}

void add_wrapped(const std::string& first, const std::string& text, Table& table) {
    table.words(text, first, "    ", 88);
}

void add_area(const TourArea& area, Table& table, const Catalogue& say) {
    table.gap();
    table.title(area.name);
    for (const std::string& text : area.included) {
        add_wrapped("  + ", text, table);
    }
    for (const TourOption& item : area.options) add_option(item, table, say);
    for (const Request& request : area.requests) {
        add_wrapped("  ", say.tour.request(request.text), table);
    }
}

/// Where an incentive goes, or what it could go to, or why it is not given.
std::string uses_text(const IncentiveOffer& offer, const Catalogue& say) {
    if (offer.why_not) return words_of(offer.why_not, say);
    std::vector<std::string> uses;
    for (const IncentiveUsed& used : offer.used) {
        uses.push_back(say.tour.towards(used.given, say.quote.use(used.use)));
    }
    if (!uses.empty()) return say.tour.used(joined(uses));
    for (const IncentiveUse use : offer.incentive.uses) uses.push_back(say.quote.use(use));
    return say.tour.not_used(joined(uses));
}

Blocks incentives_text(const TourAnswer& answer, const Catalogue& say) {
    if (answer.incentives.empty()) return {};
    Blocks out = titled(say.tour.incentives());
    for (const IncentiveOffer& offer : answer.incentives) {
        out +=
            paragraph(say.tour.incentive(offer.incentive.name, offer.whole, uses_text(offer, say)),
                      "  ", "    ");
        if (!offer.incentive.conditions.empty())
            out += paragraph(offer.incentive.conditions, "    ");
    }
    return out;
}

bool needs_trades(const TourArea& area) {
    return std::any_of(area.options.begin(), area.options.end(),
                       [](const TourOption& item) { return item.work.any(); });
}

} // namespace

Cautions cautions_of(const TourAnswer& answer, const Catalogue& say) {
    Cautions notes =
        with_loan_cautions({{CautionCode::touch_is_difference, say.tour.touch_is_difference()}},
                           answer.heading, {answer.scenario.terms}, say);
    if (std::any_of(answer.areas.begin(), answer.areas.end(), needs_trades))
        notes.push_back(work_caution(say));
    notes.push_back(agent_caution(say));
    return notes;
}

Blocks blocks_of(const TourAnswer& answer, const Catalogue& say) {
    const ScenarioTerms& terms = answer.scenario.terms;
    Blocks out = heading_text(answer.heading, say.tour.title(), say);
    out += say.tour.contract_price(answer.contract_price) + "\n";
    if (answer.scenario.available()) {
        out += paragraph(say.tour.scenario(terms.name, answer.scenario.monthly.total(),
                                           closing_words(answer.scenario.cash, say),
                                           terms_line(terms, say)),
                         "", "  ");
    } else {
        out +=
            paragraph(refused_words(terms.name, answer.scenario.refusals.front(), say), "", "  ");
    }
    out += paragraph(say.tour.how_to_read());
    Table table({{"", Align::left, name_width + 2, name_width, name_width},
                 {"", Align::left, 14, 13},
                 {say.tour.price(), Align::right, 12, 11},
                 {say.tour.a_month(), Align::right, 11, 9},
                 {say.tour.cash(), Align::right, 11, 9}});
    for (const TourArea& area : answer.areas) add_area(area, table, say);
    out += Blocks("\n") + table + incentives_text(answer, say);
    return out + footing_text(cautions_of(answer, say));
}

} // namespace quoin
