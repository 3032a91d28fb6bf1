// Rendering a comparison.
#include <quoin/render/compare.hpp>

#include <algorithm>

#include "json_parts.hpp"
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
    const std::string refusals = refusal_lines(answer.scenarios);
    if (!refusals.empty()) out += "\n" + refusals;
    return out + fine_print(answer) + footing_text(cautions_of(answer));
}

std::string json_text_of(const CompareAnswer& answer) {
    Json json = {{"question", "compare"},
                 {"heading", json_of(answer.heading)},
                 {"contract_price", answer.contract_price.text()}};
    json["scenarios"] = Json::array();
    for (const ScenarioAnswer& s : answer.scenarios) json["scenarios"].push_back(json_of(s));
    json["cautions"] = cautions_json(cautions_of(answer));
    return written(json);
}

} // namespace quoin
