// Writing what moves until the closing as JSON.
#include <quoin/render/shift.hpp>

#include "json_parts.hpp"
#include "shift_words.hpp"
#include <quoin/render/format.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

Json percent_json(const std::optional<Percent>& percent) {
    return percent ? Json(percent->value().text()) : Json(nullptr);
}

Json rate_json(const std::optional<Rate>& rate) {
    return rate ? Json(rate->text()) : Json(nullptr);
}

Json case_json(const ShiftCase& moved) {
    return {{"name", words(moved)},
            {"change", std::string(name_of(moved.change))},
            {"percent", moved.percent.value().text()},
            {"amount", moved.amount.text()}};
}

Json row_json(const ShiftRow& row) {
    Json json = {{"steps", row.steps},
                 {"by", row.by.value().text()},
                 {"rate", row.rate.text()},
                 {"apr", apr_json(row.apr)}};
    json["cells"] = Json::array();
    for (const ShiftCell& cell : row.cells) {
        Json one = {{"refusals", json_of(cell.refusals)}};
        if (cell.available()) {
            one["loan"] = cell.loan.text();
            one["monthly"] = cell.monthly.text();
            one["cash_needed"] = cell.cash_needed.text();
            one["cash_to_close"] = cell.to_close.text();
        }
        json["cells"].push_back(std::move(one));
    }
    return json;
}

Json lock_json(const ShiftLock& lock) {
    return {{"days", lock.days},
            {"ends", lock.ends.text()},
            {"covers_closing", lock.covers_closing},
            {"chosen", lock.is_chosen},
            {"points", lock.points ? Json(lock.points->value().text()) : Json(nullptr)},
            {"extra_cash", lock.points ? Json(lock.extra_cash.text()) : Json(nullptr)}};
}

Json room_json(const ShiftRoom& room) {
    return {{"to_a_thousandth", rate_json(room.to_a_thousandth)},
            {"in_steps", rate_json(room.in_steps)}};
}

Json ratios_json(const ShiftRatios& r) {
    Json json = {{"front_limit", percent_json(r.limits.front)},
                 {"back_limit", r.limits.back.value().text()},
                 {"back_limit_automated", percent_json(r.limits.back_automated)},
                 {"residual_income_tested", r.residual_tested},
                 {"residual_income_in_place_of_ratio", r.passes_by_ratio},
                 {"source", r.limits.source},
                 {"least_income", r.least_income.text()},
                 {"least_income_automated", r.least_income_automated
                                                ? Json(r.least_income_automated->text())
                                                : Json(nullptr)},
                 {"highest_rate_automated",
                  r.room_automated ? room_json(*r.room_automated) : Json(nullptr)}};
    json["incomes"] = Json::array();
    for (const ShiftIncome& one : r.incomes) {
        json["incomes"].push_back({{"by", one.by.value().text()},
                                   {"income", one.income.text()},
                                   {"front", percent_json(one.front)},
                                   {"back", percent_json(one.back)},
                                   {"within", one.within},
                                   {"highest_rate", room_json(one.room)}});
    }
    return json;
}

Json scenario_json(const ShiftScenario& s) {
    Json json = {{"terms", json_of(s.terms)}, {"refusals", json_of(s.refusals)}};
    if (!s.available()) return json;
    json["monthly"] = s.monthly.text();
    json["cash_needed"] = s.cash_needed.text();
    json["cases"] = Json::array();
    for (const ShiftCase& moved : s.cases) json["cases"].push_back(case_json(moved));
    json["rates"] = Json::array();
    for (const ShiftRow& row : s.rows) json["rates"].push_back(row_json(row));
    json["locks"] = Json::array();
    for (const ShiftLock& lock : s.locks) json["locks"].push_back(lock_json(lock));
    json["ratios"] = s.ratios ? ratios_json(*s.ratios) : Json(nullptr);
    json["ratios_unknown"] = Json::array();
    for (const ListGap& gap : s.ratios_unknown) json["ratios_unknown"].push_back(words(gap));
    return json;
}

} // namespace

std::string json_text_of(const ShiftAnswer& answer) {
    Json json = {{"question", "shift"},
                 {"heading", json_of(answer.heading)},
                 {"step", answer.ask.step.value().text()},
                 {"contract_price", answer.contract_price.text()}};
    json["scenarios"] = Json::array();
    for (const ShiftScenario& s : answer.scenarios) json["scenarios"].push_back(scenario_json(s));
    json["cautions"] = cautions_json(shift_cautions(answer));
    return written(json);
}

} // namespace quoin
