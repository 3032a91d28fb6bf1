// The wording of the server's own problems.
#include "server_problems.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <quoin/text/caps.hpp>
#include <quoin/text/plain.hpp>

namespace quoin::apps::http_problems {
namespace {

Problem problem(std::string id, std::string found, std::string expected, std::string advice = {}) {
    Problem made;
    made.id = "http-" + std::move(id);
    made.found = std::move(found);
    made.expected = std::move(expected);
    made.advice = std::move(advice);
    return made;
}

/// What was sent, as a message repeats it.
std::string repeated(std::string_view text) { return made_visible(cut(text, caps::quoted)); }

std::string near_or(std::string_view name, const std::vector<std::string>& names,
                    std::string otherwise) {
    const std::string near = nearest(name, names);
    return near.empty() ? std::move(otherwise) : fmt::format("did you mean \"{}\"?", near);
}

} // namespace

Problem host(const std::string& expected) {
    return problem("host", "another host than the one listened on", expected,
                   "open the address that quoin serve printed");
}

Problem origin(const std::string& expected) {
    return problem("origin", "a request sent by another site's page", expected,
                   "open the page that quoin serve printed the address of");
}

Problem code_needed() {
    return problem("code-needed", "no access code", "the header Quoin-Code",
                   "the code was printed where quoin serve was started");
}

Problem code_wrong() {
    return problem("code-wrong", "another access code", "the one printed at the start",
                   "a new code is made each time quoin serve starts");
}

Problem path_unknown() {
    return problem("path-unknown", "no such path", "/, /api/cases, /api/openapi.json or a question",
                   "GET /api/openapi.json describes what there is");
}

Problem method(std::string_view path, std::string_view allowed) {
    return problem("method", "another method", fmt::format("{} for {}", allowed, path));
}

Problem content_type() {
    return problem("content-type", "another content type", "Content-Type: application/json");
}

Problem content_coding() {
    return problem("content-coding", "a compressed body", "a body without Content-Encoding");
}

Problem body_length() {
    return problem("body-length", "no single, clear length of the body",
                   "one Content-Length, no chunks, and a body only with POST");
}

Problem too_large(std::size_t limit) {
    return problem("too-large", "a body above the limit",
                   fmt::format("at most {} bytes; an inquiry has a few thousand", limit));
}

Problem incomplete() {
    return problem("incomplete", "a request that is not whole or not HTTP",
                   "a whole request, sent within the time limit");
}

Problem question_unknown(std::string_view name, const std::vector<std::string>& names) {
    return problem("question-unknown", fmt::format("no question \"{}\"", repeated(name)),
                   fmt::format("one of {}", fmt::join(names, ", ")),
                   near_or(name, names, "GET /api/openapi.json describes them"));
}

Problem option_unknown(std::string_view name, std::string_view question,
                       const std::vector<std::string>& names) {
    return problem("option-unknown",
                   fmt::format("{} takes no option \"{}\"", question, repeated(name)),
                   names.empty() ? "no options" : fmt::format("one of {}", fmt::join(names, ", ")),
                   near_or(name, names, ""));
}

Problem option_missing(std::string_view name, std::string_view summary) {
    return problem("option-missing", fmt::format("no option \"{}\"", name),
                   fmt::format("{}=...: {}", name, summary));
}

Problem option_repeated(std::string_view name) {
    return problem("option-repeated", fmt::format("\"{}\" more than once", name), "one value");
}

Problem options_exclude(std::string_view one, std::string_view other) {
    return problem("options-exclude", fmt::format("\"{}\" and \"{}\"", one, other), "one of them");
}

Problem figures_too_large() {
    return problem("figures-too-large", "figures too large to count",
                   "amounts below 90 trillion dollars");
}

Problem took_too_long(std::int64_t seconds) {
    return problem(
        "took-too-long", "a question that takes too long",
        fmt::format("one that is answered within {} seconds, and before the server ends", seconds),
        "ask with fewer scenarios; on the command line nothing but Ctrl-C ends it");
}

Problem fault() {
    return problem("fault", "a fault of the program, not of your input", "an answer",
                   "the same inquiry on the command line says more");
}

} // namespace quoin::apps::http_problems
