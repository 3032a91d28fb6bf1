// Rendering a comparison.
#include <quoin/render/compare.hpp>

#include <algorithm>

#include <fmt/format.h>

#include "json_parts.hpp"
#include "order_words.hpp"
#include "scenario_table.hpp"
#include <quoin/render/format.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

/// What each program asks in return, once a program.
std::string fine_print(const CompareAnswer& answer) {
    std::string out;
    std::vector<std::string> told;
    for (const ScenarioAnswer& s : answer.scenarios) {
        const std::string& id = s.terms.program_id;
        if (s.terms.fine_print.empty() || std::find(told.begin(), told.end(), id) != told.end()) {
            continue;
        }
        told.push_back(id);
        out += paragraph(s.terms.program + ": " + s.terms.fine_print, 98, "  ", "    ");
    }
    return out.empty() ? out : "\nThe catch in each\n" + out;
}

std::string points_text(const CompareAnswer& answer) {
    std::string out;
    for (const PointsPayback& p : answer.points) {
        out +=
            paragraph(fmt::format("{}: points take {} to {}, {} more cash for {} less a month; {}",
                                  answer.scenarios[p.scenario].terms.name,
                                  percent_text(p.rate_without.percent(), 3),
                                  percent_text(p.rate.percent(), 3), dollars(p.extra_cash),
                                  dollars(p.saved_monthly), payback_words(p)),
                      98, "  ", "    ");
    }
    return out.empty() ? out : "\nWhen points pay back\n" + out;
}

std::string orders_text(const CompareAnswer& answer) {
    std::string out;
    for (const LoanOrder& o : answer.orders) {
        const std::string& first = answer.scenarios[o.first].terms.name;
        const std::string& second = answer.scenarios[o.second].terms.name;
        out += paragraph(fmt::format("{} against {}: {}", first, second,
                                     order_words(o.stretches, first, second)),
                         98, "  ", "    ");
    }
    return out.empty() ? out
                       : "\nWhich has cost less, when: cash, payments and insurance so far and the "
                         "balance owed\n" +
                             out;
}

Json curve_json(const std::vector<YearPoint>& curve) {
    Json json = Json::array();
    for (const YearPoint& point : curve) {
        json.push_back({{"year", point.year},
                        {"paid", point.paid.text()},
                        {"balance", point.balance.text()},
                        {"spent_and_owed", point.spent_and_owed.text()}});
    }
    return json;
}

/// Each stretch with the name of what has cost less in it; null: both have cost the same.
Json stretches_json(const std::vector<CostStretch>& order, const std::string& first,
                    const std::string& second) {
    Json json = Json::array();
    for (const CostStretch& stretch : order) {
        Json cheaper = stretch.cheaper == Cheaper::first ? first : second;
        if (stretch.cheaper == Cheaper::neither) cheaper = nullptr;
        json.push_back({{"cheaper", std::move(cheaper)},
                        {"from", stretch.from},
                        {"to", stretch.to ? Json(*stretch.to) : Json(nullptr)},
                        {"when", when_words(stretch)}});
    }
    return json;
}

Json points_json(const CompareAnswer& answer) {
    Json json = Json::array();
    for (const PointsPayback& p : answer.points) {
        json.push_back({{"scenario", answer.scenarios[p.scenario].terms.name},
                        {"rate", p.rate.text()},
                        {"rate_without", p.rate_without.text()},
                        {"extra_cash", p.extra_cash.text()},
                        {"saved_monthly", p.saved_monthly.text()},
                        {"break_even", p.break_even ? Json(*p.break_even) : Json(nullptr)},
                        {"stretches", stretches_json(p.order, "with", "without")},
                        {"words", payback_words(p)}});
    }
    return json;
}

Json orders_json(const CompareAnswer& answer) {
    Json json = Json::array();
    for (const LoanOrder& o : answer.orders) {
        const std::string& first = answer.scenarios[o.first].terms.name;
        const std::string& second = answer.scenarios[o.second].terms.name;
        json.push_back({{"first", first},
                        {"second", second},
                        {"stretches", stretches_json(o.stretches, first, second)}});
    }
    return json;
}

std::vector<std::string> cautions_of(const CompareAnswer& answer) {
    std::vector<std::string> notes = loan_cautions(answer.heading, terms_of(answer.scenarios));
    notes.push_back(agent_caution());
    return notes;
}

} // namespace

std::string text_of(const CompareAnswer& answer) {
    std::string out = heading_text(answer.heading, "Loans side by side on one home");
    out += "contract price " + dollars(answer.contract_price) + "\n";
    out += "\nThe month\n" + month_table(answer.scenarios);
    out += "\nThe loan\n" + loan_table(answer.scenarios);
    out += "\nCash\n" + cash_table(answer.scenarios);
    out += "\nThe years\n" + years_table(answer.scenarios);
    out += points_text(answer) + orders_text(answer);
    const std::string refusals = refusal_lines(answer.scenarios);
    if (!refusals.empty()) out += "\n" + refusals;
    return out + fine_print(answer) + footing_text(cautions_of(answer));
}

std::string json_text_of(const CompareAnswer& answer) {
    Json json = {{"question", "compare"},
                 {"heading", json_of(answer.heading)},
                 {"contract_price", answer.contract_price.text()}};
    json["scenarios"] = Json::array();
    for (std::size_t i = 0; i < answer.scenarios.size(); ++i) {
        Json scenario = json_of(answer.scenarios[i]);
        scenario["against_first"] = Json::object();
        add_difference(answer.against_first[i], scenario["against_first"]);
        scenario["curve"] = curve_json(answer.curves[i]);
        json["scenarios"].push_back(std::move(scenario));
    }
    json["points"] = points_json(answer);
    json["orders"] = orders_json(answer);
    json["cautions"] = cautions_json(cautions_of(answer));
    return written(json);
}

} // namespace quoin
