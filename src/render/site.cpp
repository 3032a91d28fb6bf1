// Rendering the lots and plans of a community.
#include <quoin/render/site.hpp>

#include <fmt/format.h>

#include "json_parts.hpp"
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

template <class Measures>
Json measures_json(const Measures& measures) {
    Json json = Json::array();
    for (const Measure& measure : measures) {
        json.push_back({{"name", measure.name},
                        {"value", measure.value.text()},
                        {"words", measure_text(measure)}});
    }
    return json;
}

Json fallen_json(const std::vector<FallsOut>& fallen) {
    Json json = Json::array();
    for (const FallsOut& one : fallen) {
        json.push_back({{"option", one.option}, {"name", one.name}, {"why", one.why}});
    }
    return json;
}

Json move_json(const std::optional<SiteMove>& move) {
    if (!move) return nullptr;
    Json json = {{"price", move->price.text()}};
    add_difference(move->added, json);
    return json;
}

Json lot_json(const SiteLot& lot) {
    Json json = {{"id", lot.id},
                 {"status", std::string(name_of(lot.status))},
                 {"premium", lot.premium.text()},
                 {"grade", std::string(name_of(lot.grade))},
                 {"flood_zone", lot.flood_zone}};
    json["plans"] = lot.plans;
    json["every_plan"] = lot.every_plan;
    json["note"] = lot.note;
    json["measures"] = measures_json(lot.measures);
    json["chosen"] = lot.chosen;
    json["fits"] = lot.fits;
    json["can_be_had"] = lot.can_be_had();
    json["falls_out"] = fallen_json(lot.falls_out);
    json["move"] = move_json(lot.move);
    return json;
}

Json plan_json(const SitePlan& plan) {
    Json json = {{"id", plan.id},
                 {"name", plan.name},
                 {"style", plan.style},
                 {"note", plan.note},
                 {"base_price", plan.base_price.text()},
                 {"bedrooms", plan.bedrooms.text()},
                 {"bathrooms", plan.bathrooms.text()},
                 {"square_feet", plan.square_feet.text()}};
    json["measures"] = measures_json(plan.measures);
    json["elevations"] = Json::array();
    for (const auto& [elevation, falls_out, move] : plan.elevations) {
        json["elevations"].push_back({{"id", elevation.id},
                                      {"name", elevation.name},
                                      {"note", elevation.note},
                                      {"price", elevation.price.text()},
                                      {"falls_out", fallen_json(falls_out)},
                                      {"move", move_json(move)}});
    }
    json["chosen"] = plan.chosen;
    json["fits"] = plan.fits;
    return json;
}

std::vector<std::string> cautions_of(const SiteAnswer& answer) {
    std::vector<std::string> notes{
        "Widths and setbacks are the price book's; the survey and the permit set decide what may "
        "be built where."};
    for (std::string& note : loan_cautions(answer.heading, {answer.terms}))
        notes.push_back(std::move(note));
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

std::string json_text_of(const SiteAnswer& answer) {
    Json json = {
        {"question", "site"},  {"heading", json_of(answer.heading)}, {"lot", answer.lot},
        {"plan", answer.plan}, {"elevation", answer.elevation},      {"note", answer.note}};
    json["terms"] = json_of(answer.terms);
    json["lots"] = Json::array();
    for (const SiteLot& lot : answer.lots) json["lots"].push_back(lot_json(lot));
    json["plans"] = Json::array();
    for (const SitePlan& plan : answer.plans) json["plans"].push_back(plan_json(plan));
    json["cautions"] = cautions_json(cautions_of(answer));
    return written(json);
}

} // namespace quoin
