// Rendering the lots and plans of a community.
#include <quoin/answers/site.hpp>

#include <fmt/format.h>

#include "shared_fields.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/format.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

/// "rear setback 31 ft": a measure's name ends in its unit.
std::string measure_text(const Measure& measure) {
    std::string name = measure.name;
    std::string unit;
    for (const auto& [suffix, words] : {std::pair("_sq_ft", " sq ft"), std::pair("_ft", " ft")}) {
        if (!name.ends_with(suffix)) continue;
        unit = words;
        name.resize(name.size() - std::string_view(suffix).size());
        break;
    }
    for (char& letter : name) letter = letter == '_' ? ' ' : letter;
    return name + " " + grouped(measure.value) + unit;
}

std::string measures_text(const std::vector<Measure>& measures) {
    std::vector<std::string> texts;
    for (const Measure& measure : measures) texts.push_back(measure_text(measure));
    return joined(texts);
}

std::string_view for_you(const SiteLot& lot) {
    if (lot.chosen) return "yours";
    if (lot.status != LotStatus::free) return "";
    return lot.fits ? "can be had" : "your plan does not fit";
}

/// What it comes to there, and what would not go along.
template <class Place>
void add_move(const Place& place, std::string_view led_by, Table& table) {
    if (!place.move) return;
    const SiteMove& move = *place.move;
    std::string words = fmt::format("{}{} in price", led_by, signed_dollars(move.price));
    words += move.added.available()
                 ? fmt::format(", {} a month, {} cash in all", signed_dollars(move.added.per_month),
                               signed_dollars(move.added.cash))
                 : "; the loan cannot be had: " + quoin::words(move.added.refusals.front());
    table.remark(words, 88);
    for (const FallsOut& one : place.falls_out) {
        table.remark(fmt::format("would fall out: {} ({})", one.name, one.why), 88);
    }
}

void add_lot(const SiteLot& lot, Table& table) {
    table.row({lot.id, std::string(name_of(lot.status)), std::string(name_of(lot.grade)),
               lot.every_plan ? "every plan" : joined(lot.plans), std::string(for_you(lot)),
               dollars(lot.premium)});
    table.remark(measures_text(lot.measures) + (lot.flood_zone ? "; flood zone" : ""), 88);
    table.remark(lot.note, 88);
    add_move(lot, "", table);
}

void add_plan(const SitePlan& plan, Table& table) {
    const std::string size = fmt::format("{} sq ft, {} bed, {} bath", grouped(plan.square_feet),
                                         plan.bedrooms.text(), plan.bathrooms.text());
    table.row({plan.name, plan.style, size,
               plan.chosen ? "yours"
               : plan.fits ? "fits your lot"
                           : "does not fit your lot",
               dollars(plan.base_price)});
    table.remark(plan.note, 88);
    for (const SiteElevation& one : plan.elevations) {
        add_move(one, one.elevation.name + ": ", table);
    }
}

Cautions cautions_of(const SiteAnswer& answer) {
    Cautions notes = with_loan_cautions(
        {{CautionCode::survey_decides,
          "Widths and setbacks are the price book's; the survey and the permit set decide what may "
          "be built where."}},
        answer.heading, {answer.terms});
    notes.push_back(agent_caution());
    return notes;
}

} // namespace

std::string text_of(const SiteAnswer& answer) {
    std::string out = heading_text(answer.heading, "The lots and the plans");
    if (!answer.note.empty()) out += paragraph(answer.note);
    out += paragraph(
        fmt::format("A move is figured under {}: {}", answer.terms.name, terms_line(answer.terms)),
        "", "  ");
    Table lots({{"lot", Align::left, 8, 5},
                {"", Align::left, 6, 6},
                {"ground", Align::left, 10, 9},
                {"plans", Align::left, 34, 30},
                {"for you", Align::left, 24, 22},
                {"premium", Align::right, 12, 11}});
    for (const SiteLot& lot : answer.lots) add_lot(lot, lots);
    Table plans({{"plan", Align::left, 14, 12},
                 {"", Align::left, 10, 10},
                 {"", Align::left, 40, 36},
                 {"for you", Align::left, 24, 22},
                 {"base price", Align::right, 12, 11}});
    for (const SitePlan& plan : answer.plans) add_plan(plan, plans);
    return out + "\n" + lots.text() + "\n" + plans.text() + footing_text(cautions_of(answer));
}

template <class V, Of<Measure> A>
void fields(V& v, A& measure) {
    v.named("Measure");
    v("name", measure.name);
    v("value", measure.value);
    v.words("words", [&] { return measure_text(measure); });
}

template <class V, Of<FallsOut> A>
void fields(V& v, A& one) {
    v.named("FallsOut");
    v("option", one.option);
    v("name", one.name);
    v("why", one.why);
}

template <class V, Of<SiteMove> A>
void fields(V& v, A& move) {
    v.named("Move");
    v("price", move.price);
    difference(v, move.added);
}

template <class V, Of<SiteLot> A>
void fields(V& v, A& lot) {
    v.named("Lot");
    v("id", lot.id);
    v("status", lot.status);
    v("premium", lot.premium);
    v("grade", lot.grade);
    v("flood_zone", lot.flood_zone);
    v("plans", lot.plans);
    v("every_plan", lot.every_plan);
    v("note", lot.note);
    v("measures", lot.measures);
    v("chosen", lot.chosen);
    v("fits", lot.fits);
    v.said("can_be_had", [&] { return lot.can_be_had(); });
    v("falls_out", lot.falls_out);
    v("move", lot.move);
}

template <class V, Of<SiteElevation> A>
void fields(V& v, A& one) {
    v.named("Elevation");
    v("id", one.elevation.id);
    v("name", one.elevation.name);
    v("note", one.elevation.note);
    v("price", one.elevation.price);
    v("falls_out", one.falls_out);
    v("move", one.move);
}

template <class V, Of<SitePlan> A>
void fields(V& v, A& plan) {
    v.named("Plan");
    v("id", plan.id);
    v("name", plan.name);
    v("style", plan.style);
    v("note", plan.note);
    v("base_price", plan.base_price);
    v("bedrooms", plan.bedrooms);
    v("bathrooms", plan.bathrooms);
    v("square_feet", plan.square_feet);
    v("measures", plan.measures);
    v("elevations", plan.elevations);
    v("chosen", plan.chosen);
    v("fits", plan.fits);
}

template <class V, Of<SiteAnswer> A>
void fields(V& v, A& answer) {
    v.named("Site");
    v.constant("question", "site");
    v("heading", answer.heading);
    v("lot", answer.lot);
    v("plan", answer.plan);
    v("elevation", answer.elevation);
    v("note", answer.note);
    v("terms", answer.terms);
    v("lots", answer.lots);
    v("plans", answer.plans);
    v.words("cautions", [&] { return cautions_of(answer); });
}

template std::string json_text_of(const SiteAnswer&);

template const Shape& shape_of<SiteAnswer>();
template std::optional<SiteAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
