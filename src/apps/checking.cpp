// Reporting a check.
#include "checking.hpp"

#include <nlohmann/json.hpp>

#include <quoin/render/problems.hpp>

namespace quoin::apps {
namespace {

std::string as_text(const std::vector<Checked>& checked) {
    std::string out;
    for (const Checked& file : checked) {
        if (file.findings.none()) out += file.file + ": " + file.kind + ", sound\n";
    }
    return out;
}

std::string as_json(const std::vector<Checked>& checked) {
    nlohmann::ordered_json list = nlohmann::ordered_json::array();
    for (const Checked& file : checked) {
        auto entry = nlohmann::ordered_json::parse(json_text_of(file.findings));
        list.push_back({{"file", file.file},
                        {"kind", file.kind},
                        {"sound", file.findings.none()},
                        {"problems", entry["problems"]}});
    }
    using Json = nlohmann::ordered_json;
    return Json{{"files", list}}.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace

Outcome report(const std::vector<Checked>& checked, bool json) {
    Outcome outcome;
    outcome.output = json ? as_json(checked) : as_text(checked);
    for (const Checked& file : checked) {
        if (file.findings.none()) continue;
        outcome.input_sound = false;
        if (!json) outcome.errors += text_of(file.findings);
    }
    return outcome;
}

} // namespace quoin::apps
