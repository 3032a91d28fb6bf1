// Rendering the lots and plans of a community.
#include <quoin/render/site.hpp>

#include <fmt/format.h>

#include "shared_fields.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/format.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

std::string joined(const std::vector<std::string>& names) {
    std::string text;
    for (const std::string& name : names) text += (text.empty() ? "" : ", ") + name;
    return text;
}

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

void remark(const std::string& words, Table& table) {
    if (words.empty()) return;
    for (const std::string& line : wrapped(words, 88)) table.title("      " + line);
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
    remark(words, table);
    for (const FallsOut& one : place.falls_out) {
        remark(fmt::format("would fall out: {} ({})", one.name, one.why), table);
    }
}

void add_lot(const SiteLot& lot, Table& table) {
    table.row({lot.id, std::string(name_of(lot.status)), std::string(name_of(lot.grade)),
               lot.every_plan ? "every plan" : joined(lot.plans), std::string(for_you(lot)),
               dollars(lot.premium)});
    remark(measures_text(lot.measures) + (lot.flood_zone ? "; flood zone" : ""), table);
    remark(lot.note, table);
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
    remark(plan.note, table);
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
    if (!answer.note.empty()) out += paragraph(answer.note, 98, "", "");
    out += paragraph(
        fmt::format("A move is figured under {}: {}", answer.terms.name, terms_line(answer.terms)),
        98, "", "  ");
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

template <>
inline constexpr std::string_view shape_name<SiteAnswer> = "Site";
template <>
inline constexpr std::string_view shape_name<FallsOut> = "FallsOut";
template <>
inline constexpr std::string_view shape_name<Measure> = "Measure";
template <>
inline constexpr std::string_view shape_name<SiteMove> = "Move";
template <>
inline constexpr std::string_view shape_name<SiteLot> = "Lot";
template <>
inline constexpr std::string_view shape_name<SiteElevation> = "Elevation";
template <>
inline constexpr std::string_view shape_name<SitePlan> = "Plan";

template <class V, Of<Measure> A>
void fields(V& v, A& measure) {
    v("name", measure.name);
    v("value", measure.value);
    v.words("words", [&] { return measure_text(measure); });
}

template <class V, Of<FallsOut> A>
void fields(V& v, A& one) {
    v("option", one.option);
    v("name", one.name);
    v("why", one.why);
}

template <class V, Of<SiteMove> A>
void fields(V& v, A& move) {
    v("price", move.price);
    difference(v, move.added);
}

template <class V, Of<SiteLot> A>
void fields(V& v, A& lot) {
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
    v("id", one.elevation.id);
    v("name", one.elevation.name);
    v("note", one.elevation.note);
    v("price", one.elevation.price);
    v("falls_out", one.falls_out);
    v("move", one.move);
}

template <class V, Of<SitePlan> A>
void fields(V& v, A& plan) {
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

std::string json_text_of(const SiteAnswer& answer) { return json_of_fields(answer); }

template const Shape& shape_of<SiteAnswer>();
template std::optional<SiteAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
