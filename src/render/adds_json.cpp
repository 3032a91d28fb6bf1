// Writing what options add as JSON.
#include "adds_json.hpp"

#include <quoin/render/words.hpp>

namespace quoin {
namespace {

Json side_json(const JumpSide& side) { return {{"band", side.band}, {"value", side.value}}; }

Json added_json(const AddsScenario& scenario, const Added& added) {
    Json json = {{"scenario", scenario.terms.name}, {"available", added.available()}};
    if (!added.available()) {
        json["refusals"] = json_of(added.refusals);
        return json;
    }
    json["per_month"] = added.per_month.text();
    json["monthly"] = json_of(added.monthly);
    json["cash_needed"] = added.cash.text();
    json["cash_to_close"] = added.to_close.text();
    json["in_five_years"] = added.in_five_years.text();
    json["over_loan"] = added.over_loan.text();
    json["jumps"] = Json::array();
    for (const Jump& jump : added.jumps) {
        json["jumps"].push_back({{"why", std::string(name_of(jump.lookup))},
                                 {"before", side_json(jump.before)},
                                 {"after", side_json(jump.after)},
                                 {"words", words(jump, added)}});
    }
    return json;
}

Json by_scenario_json(const AddsAnswer& answer, const std::vector<Added>& by_scenario) {
    Json json = Json::array();
    for (std::size_t i = 0; i < by_scenario.size(); ++i) {
        json.push_back(added_json(answer.scenarios[i], by_scenario[i]));
    }
    return json;
}

Json item_json(const AddsAnswer& answer, const AddsItem& item) {
    Json json = {{"id", item.id},
                 {"name", item.name},
                 {"level", item.level},
                 {"area", item.area},
                 {"standing", std::string(name_of(item.standing))}};
    json["wish"] = item.wish > 0 ? Json(item.wish) : Json(nullptr);
    json["quantity"] = item.quantity.text();
    json["unit"] = std::string(name_of(item.unit));
    json["structural"] = item.structural;
    json["work"] = json_of(item.work);
    json["cutoff"] = item.cutoff;
    json["note"] = item.note;
    json["later"] =
        item.later ? Json{{"estimate", item.later->estimate.text()}, {"note", item.later->note}}
                   : Json(nullptr);
    if (item.standing == Standing::barred) json["why_not"] = item.why_not;
    if (item.standing == Standing::held) json["package"] = item.package;
    if (item.by_scenario.empty()) return json;
    json["price"] = item.price.text();
    json["along"] = item.along;
    json["instead_of"] = item.instead;
    json["by_scenario"] = by_scenario_json(answer, item.by_scenario);
    return json;
}

Json step_json(const AddsAnswer& answer, const AddsStep& step) {
    return {{"id", step.id},
            {"name", step.name},
            {"level", step.level},
            {"price", step.price.text()},
            {"by_scenario", by_scenario_json(answer, step.by_scenario)}};
}

} // namespace

Json json_of(const AddsAnswer& answer) {
    Json json = {{"question", "adds"},
                 {"heading", json_of(answer.heading)},
                 {"contract_price", answer.contract_price.text()}};
    json["scenarios"] = Json::array();
    for (const AddsScenario& scenario : answer.scenarios) {
        json["scenarios"].push_back({{"terms", json_of(scenario.terms)},
                                     {"per_thousand", scenario.per_thousand.text()},
                                     {"monthly", json_of(scenario.monthly)},
                                     {"refusals", json_of(scenario.refusals)}});
    }
    json["items"] = Json::array();
    for (const AddsItem& item : answer.items) json["items"].push_back(item_json(answer, item));
    json["stacked"] = Json::array();
    for (const AddsStep& step : answer.stacked) json["stacked"].push_back(step_json(answer, step));
    json["whole"] = step_json(answer, answer.whole);
    json["cautions"] = cautions_json(cautions_of(answer));
    return json;
}

std::string json_text_of(const AddsAnswer& answer) { return written(json_of(answer)); }

} // namespace quoin
