// Reporting a check.
#include "checking.hpp"

#include <fmt/format.h>
#include <quoin/render/problems.hpp>
#include <quoin/render/table.hpp>
#include <quoin/words/figures.hpp>

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
                       english_date(plus_days(ending.until, -1)), then(ending.after));
}

void write(const EndingTable& table, JsonWriter& json) {
    json.object([&] {
        json.text("of", table.of);
        json.text("list", code_of(table.ending.list));
        json.text("name", table.ending.name);
        json.text("until", table.ending.until.text());
        json.text("after", code_of(table.ending.after));
    });
}

void write(const Checked& file, JsonWriter& json) {
    json.object([&] {
        json.text("file", file.file);
        json.text("kind", code_of(file.kind));
        json.truth("sound", file.findings.none());
        json.key("problems");
        write_problems(file.findings, json);
        json.list("ending", [&] {
            for (const EndingTable& table : file.endings) write(table, json);
        });
    });
}

std::string as_text(const std::vector<Checked>& checked) {
    std::string out;
    for (const Checked& file : checked) {
        if (!file.findings.none()) continue;
        out += fmt::format("{}: {}, sound\n", file.file, name_of(file.kind));
        for (const EndingTable& table : file.endings) {
            out += paragraph(ending_words(table), "  ", "    ");
        }
    }
    return out;
}

std::string as_json(const std::vector<Checked>& checked) {
    JsonWriter json;
    json.object([&] {
        json.list("files", [&] {
            for (const Checked& file : checked) write(file, json);
        });
    });
    return json.take() + "\n";
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
