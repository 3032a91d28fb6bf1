// Rendering problems.
#include <quoin/render/problems.hpp>

#include <fmt/format.h>

#include "fields.hpp"
#include <quoin/text/plain.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/words/problem_words.hpp>

#include "words/problems.hpp"

namespace quoin {
namespace {

std::string excerpt_of(const Problem& problem) {
    if (problem.line == 0 || problem.excerpt.empty()) return {};
    const std::string number = std::to_string(problem.line);
    const auto offset = static_cast<std::size_t>(problem.column - 1 - problem.excerpt_from);
    std::string under; // tabs are kept, so that the carets stand under the value
    for (std::size_t i = 0; i < offset && i < problem.excerpt.size(); ++i) {
        under += problem.excerpt[i] == '\t' ? '\t' : ' ';
    }
    return fmt::format("  {} | {}\n  {} | {}{}\n", number, problem.excerpt,
                       std::string(number.size(), ' '), under,
                       std::string(static_cast<std::size_t>(problem.width), '^'));
}

std::string text_of(const Problem& p, const Catalogue& say) {
    const ProblemWords words = words_of(p, say);
    std::string place;
    if (!p.file.empty()) place += p.file + ":";
    if (p.line > 0) place += fmt::format("{}:{}:", p.line, p.column);
    if (!place.empty()) place += " ";
    std::string out = say.problems.found(place, words.found) + "\n" + excerpt_of(p);
    if (!p.path.empty()) out += fmt::format("  {}\n", say.problems.at(p.path));
    out += fmt::format("  {}\n", say.problems.expected(words.expected));
    if (!words.advice.empty()) out += fmt::format("  {}\n", words.advice);
    return out + fmt::format("  [{}]\n", name_of(p.id));
}

} // namespace

std::string text_of(const Findings& findings, const Catalogue& say) {
    std::string out;
    for (const Problem& problem : findings.problems()) out += text_of(problem, say);
    return made_visible(out, "\n\t"); // a file's name may hold anything
}

void fields(auto& v, Of<Problem> auto& problem) {
    const std::optional<About> thing = about(problem);
    v.said("id", [&] { return std::string(name_of(problem.id)); });
    v("file", problem.file);
    v("line", problem.line);
    v("column", problem.column);
    v("path", problem.path);
    v.words("found", [&](const Catalogue& say) { return words_of(problem, say).found; });
    v.words("expected", [&](const Catalogue& say) { return words_of(problem, say).expected; });
    v.words("advice", [&](const Catalogue& say) { return words_of(problem, say).advice; });
    v.given("about", thing, [&](const About& it) {
        v.object("about", [&] {
            v("what", it.what);
            v("id", it.id);
            v.words("found", [&](const Catalogue& say) { return words_of(problem, say).of_it; });
        });
    });
}

void fields(auto& v, Of<Findings> auto& findings) { v("problems", findings.problems()); }

void write_problems(const Findings& findings, JsonWriter& json, const Catalogue& say) {
    FieldsToJson(json, say).write(findings.problems());
}

std::string json_text_of(const Findings& findings, const Catalogue& say) {
    return json_text_of<Findings>(findings, say);
}

} // namespace quoin
