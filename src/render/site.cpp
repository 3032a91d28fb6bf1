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

template <class Place>
void add_fallen(const Place& place, Table& table) {
    if (place.chosen) return;
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
    if (lot.can_be_had()) add_fallen(lot, table);
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
    if (plan.fits) add_fallen(plan, table);
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
    for (const Elevation& elevation : plan.elevations) {
        json["elevations"].push_back({{"id", elevation.id},
                                      {"name", elevation.name},
                                      {"note", elevation.note},
                                      {"price", elevation.price.text()}});
    }
    json["chosen"] = plan.chosen;
    json["fits"] = plan.fits;
    json["falls_out"] = fallen_json(plan.falls_out);
    return json;
}

} // namespace

std::string text_of(const SiteAnswer& answer) {
    std::string out = heading_text(answer.heading, "The lots and the plans");
    if (!answer.note.empty()) out += paragraph(answer.note, 98, "", "");
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
    return out + "\n" + lots.text() + "\n" + plans.text() +
           footing_text({"Widths and setbacks are the price book's; the survey and the permit set "
                         "decide what may be built where."});
}

std::string json_text_of(const SiteAnswer& answer) {
    Json json = {
        {"question", "site"},  {"heading", json_of(answer.heading)}, {"lot", answer.lot},
        {"plan", answer.plan}, {"elevation", answer.elevation},      {"note", answer.note}};
    json["lots"] = Json::array();
    for (const SiteLot& lot : answer.lots) json["lots"].push_back(lot_json(lot));
    json["plans"] = Json::array();
    for (const SitePlan& plan : answer.plans) json["plans"].push_back(plan_json(plan));
    return written(json);
}

} // namespace quoin
