// Reporting a check.
#include "checking.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <quoin/render/format.hpp>
#include <quoin/render/problems.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>

namespace quoin::apps {
namespace {

/// What follows a table that has no other to follow it.
std::string_view then(After after) {
    switch (after) {
    case After::unknown:
        return "from then on what needs it is refused, until the data have the next one";
    case After::continues:
        return "from then on it is used all the same, and every answer says so, until the data "
               "have the next one";
    case After::ends:
        return "from then on there is no such rule";
    }
    return {};
}

std::string ending_words(const EndingTable& table) {
    const Ending& ending = table.ending;
    const std::string name = ending.name.empty() ? "" : " \"" + ending.name + "\"";
    return fmt::format("{}: {}{} is in force through {}; {}", table.of, name_of(ending.list), name,
                       long_date(plus_days(ending.until, -1)), then(ending.after));
}

nlohmann::ordered_json endings_json(const std::vector<EndingTable>& endings) {
    nlohmann::ordered_json list = nlohmann::ordered_json::array();
    for (const EndingTable& table : endings) {
        list.push_back({{"of", table.of},
                        {"list", std::string(name_of(table.ending.list))},
                        {"name", table.ending.name},
                        {"until", table.ending.until.text()},
                        {"after", std::string(name_of(table.ending.after))}});
    }
    return list;
}

std::string as_text(const std::vector<Checked>& checked) {
    std::string out;
    for (const Checked& file : checked) {
        if (!file.findings.none()) continue;
        out += file.file + ": " + file.kind + ", sound\n";
        for (const EndingTable& table : file.endings) {
            out += paragraph(ending_words(table), 98, "  ", "    ");
        }
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
                        {"problems", entry["problems"]},
                        {"ending", endings_json(file.endings)}});
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
