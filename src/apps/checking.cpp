// Reporting a check.
#include "checking.hpp"

#include "words/apps.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/problems.hpp>
#include <quoin/render/words.hpp>

namespace quoin::apps {
namespace {

std::string ending_words(const EndingTable& table, const Catalogue& say) {
    const CheckingWords& of = say.apps.checking;
    const Ending& ending = table.ending;
    return of.ending(table.of, words(ending.list, say),
                     ending.name.empty() ? std::string() : of.named(ending.name),
                     plus_days(ending.until, -1), of.after(ending.after));
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

void write(const Checked& file, const Catalogue& say, JsonWriter& json) {
    json.object([&] {
        json.text("file", file.file);
        json.text("kind", code_of(file.kind));
        json.truth("sound", file.findings.none());
        json.key("problems");
        write_problems(file.findings, json, say);
        json.list("ending", [&] {
            for (const EndingTable& table : file.endings) write(table, json);
        });
    });
}

Blocks as_text(const std::vector<Checked>& checked, const Catalogue& say) {
    const CheckingWords& of = say.apps.checking;
    Blocks out;
    for (const Checked& file : checked) {
        if (!file.findings.none()) continue;
        out += of.sound(file.file, of.kind(file.kind)) + "\n";
        for (const EndingTable& table : file.endings) {
            out += paragraph(ending_words(table, say), "  ", "    ");
        }
    }
    return out;
}

std::string as_json(const std::vector<Checked>& checked, const Catalogue& say) {
    JsonWriter json;
    json.object([&] {
        json.list("files", [&] {
            for (const Checked& file : checked) write(file, say, json);
        });
    });
    return json.take() + "\n";
}

} // namespace

Outcome report(const std::vector<Checked>& checked, const Typed& typed) {
    const Catalogue& say = catalogue_in(typed.language);
    Outcome outcome;
    outcome.output = typed.json ? as_json(checked, say)
                                : as_text(checked, say).text(typed.width.value_or(usual_width));
    for (const Checked& file : checked) {
        if (file.findings.none()) continue;
        outcome.input_sound = false;
        if (!typed.json) outcome.errors += text_of(file.findings, say);
    }
    return outcome;
}

} // namespace quoin::apps
