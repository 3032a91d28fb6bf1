// What a test asks of findings: their ids in order, and the one at a place.
#pragma once

#include <algorithm>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include <quoin/text/problems.hpp>
#include <quoin/text/value.hpp>
#include <quoin/words/problem_words.hpp>

namespace quoin::test {

using Ids = std::vector<std::string>;

inline Ids problem_ids(const Findings& findings) {
    Ids ids;
    for (const Problem& problem : findings.problems()) ids.emplace_back(name_of(problem.id));
    return ids;
}

/// The ids in alphabetical order, where the order of the findings is of no interest.
inline Ids sorted_ids(const Findings& findings) {
    Ids ids = problem_ids(findings);
    std::sort(ids.begin(), ids.end());
    return ids;
}

/// "line:column" of a problem.
inline std::string place_of(const Problem& problem) {
    return std::to_string(problem.line) + ":" + std::to_string(problem.column);
}

/// Id, place and found of every problem, for the message of a failed test.
inline std::string listing(const Findings& findings) {
    std::string text;
    for (const Problem& problem : findings.problems()) {
        const ProblemWords words = words_of(problem, catalogue_in(Language::english));
        text += std::string(name_of(problem.id)) + " at " + place_of(problem) + " " + problem.path +
                ": found " + words.found + ", expected " + words.expected + "\n";
    }
    return text;
}

/// A text parsed as JSON, whatever comes of it.
struct Parsed {
    Findings findings; // before the document, whose reading fills them
    Document document;

    explicit Parsed(std::string text)
        : document(parse_json(std::make_shared<Source>("t.json", std::move(text)), findings)) {}
    [[nodiscard]] const Value& root() const { return document.root; }
};

/// The stretch of its source that a value stands for.
inline std::string stretch(const Value& value) {
    return std::string(
        value.place.source->text().substr(value.place.begin, value.place.end - value.place.begin));
}

} // namespace quoin::test
