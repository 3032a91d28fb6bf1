// Rendering the lots and plans of a community.
#include <quoin/answers/site.hpp>

#include <fmt/format.h>

#include "shared_fields.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

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
    if (lot.lot.status != LotStatus::free) return "";
    return lot.fits ? "can be had" : "your plan does not fit";
}

/// What it comes to there, and what would not go along.
void add_move(const auto& place, std::string_view led_by, Table& table) {
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
    table.row({lot.lot.id, std::string(name_of(lot.lot.status)),
               std::string(name_of(lot.lot.grade)),
               lot.every_plan ? "every plan" : joined(lot.plans), std::string(for_you(lot)),
               dollars(lot.lot.premium)});
    table.remark(measures_text(lot.lot.measures) + (lot.lot.flood_zone ? "; flood zone" : ""), 88);
    table.remark(lot.lot.note, 88);
    add_move(lot, "", table);
}

void add_plan(const SitePlan& plan, Table& table) {
    const std::string size =
        fmt::format("{} sq ft, {} bed, {} bath", grouped(plan.plan.square_feet),
                    plan.plan.bedrooms.text(), plan.plan.bathrooms.text());
    table.row({plan.plan.name, plan.plan.style, size,
               plan.chosen ? "yours"
               : plan.fits ? "fits your lot"
                           : "does not fit your lot",
               dollars(plan.plan.base_price)});
    table.remark(plan.plan.note, 88);
    for (const SiteElevation& one : plan.elevations) {
        add_move(one, one.elevation.name + ": ", table);
    }
}

Cautions cautions_of(const SiteAnswer& answer, const Catalogue& say) {
    Cautions notes = with_loan_cautions(
        {{CautionCode::survey_decides,
          "Widths and setbacks are the price book's; the survey and the permit set decide what may "
          "be built where."}},
        answer.heading, {answer.terms});
    notes.push_back(agent_caution(say));
    return notes;
}

} // namespace

std::string text_of(const SiteAnswer& answer, const Catalogue& say) {
    std::string out = heading_text(answer.heading, "The lots and the plans", say);
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
    return out + "\n" + lots.text() + "\n" + plans.text() + footing_text(cautions_of(answer, say));
}

void fields(auto& v, Of<Measure> auto& measure) {
    v.named("Measure");
    v("name", measure.name);
    v("value", measure.value);
    v.words("words", [&] { return measure_text(measure); });
}

void fields(auto& v, Of<FallsOut> auto& one) {
    v.named("FallsOut");
    v("option", one.option);
    v("name", one.name);
    v("why", one.why);
}

void fields(auto& v, Of<SiteMove> auto& move) {
    v.named("Move");
    v("price", move.price);
    difference(v, move.added);
}

void fields(auto& v, Of<SiteLot> auto& lot) {
    v.named("Lot");
    v("id", lot.lot.id);
    v("status", lot.lot.status);
    v("premium", lot.lot.premium);
    v("grade", lot.lot.grade);
    v("flood_zone", lot.lot.flood_zone);
    v("plans", lot.plans);
    v("every_plan", lot.every_plan);
    v("note", lot.lot.note);
    v("measures", lot.lot.measures);
    v("chosen", lot.chosen);
    v("fits", lot.fits);
    v.said("can_be_had", [&] { return lot.can_be_had(); });
    v("falls_out", lot.falls_out);
    v("move", lot.move);
}

void fields(auto& v, Of<SiteElevation> auto& one) {
    v.named("Elevation");
    v("id", one.elevation.id);
    v("name", one.elevation.name);
    v("note", one.elevation.note);
    v("price", one.elevation.price);
    v("falls_out", one.falls_out);
    v("move", one.move);
}

void fields(auto& v, Of<SitePlan> auto& plan) {
    v.named("Plan");
    v("id", plan.plan.id);
    v("name", plan.plan.name);
    v("style", plan.plan.style);
    v("note", plan.plan.note);
    v("base_price", plan.plan.base_price);
    v("bedrooms", plan.plan.bedrooms);
    v("bathrooms", plan.plan.bathrooms);
    v("square_feet", plan.plan.square_feet);
    v("measures", plan.plan.measures);
    v("elevations", plan.elevations);
    v("chosen", plan.chosen);
    v("fits", plan.fits);
}

void fields(auto& v, Of<SiteAnswer> auto& answer) {
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
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const SiteAnswer&, const Catalogue&);

template const Shape& shape_of<SiteAnswer>();
template std::optional<SiteAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
