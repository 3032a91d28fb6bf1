// How much is read, how much is told: work and messages that do not grow with what was sent.
#include <shown.hpp>

#include <quoin/text/caps.hpp>
#include <quoin/text/plain.hpp>
#include <quoin/text/reader.hpp>

#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

std::string repeated(std::size_t count, const std::string& before, const std::string& each,
                     const std::string& after) {
    std::string text = before;
    for (std::size_t i = 0; i < count; ++i) text += (i == 0 ? "" : ",") + each;
    return text + after;
}

/// An object of so many members, each under its own name.
std::string members(std::size_t count) {
    std::string text = "{";
    for (std::size_t i = 0; i < count; ++i) {
        text += (i == 0 ? "\"k" : ",\"k") + std::to_string(i) + "\":1";
    }
    return text + "}";
}

std::string columns(std::size_t count) {
    std::string text;
    for (std::size_t i = 0; i < count; ++i) text += (i == 0 ? "c" : ",c") + std::to_string(i);
    return text + "\n";
}

Ids ids_of_csv(std::string text) {
    Findings findings;
    static_cast<void>(parse_csv(std::make_shared<Source>("t.csv", std::move(text)), findings));
    return problem_ids(findings);
}

/// Reads {"list": [...]} with a cap: how many entries were read, and what was found.
std::pair<std::size_t, Findings> read_list(const std::string& text, std::size_t most) {
    const Parsed parsed(text);
    REQUIRE(parsed.findings.none());
    std::pair<std::size_t, Findings> read;
    Reader reader(parsed.root(), Path{}, read.second);
    reader.items(
        "list", [&](const Spot&) { ++read.first; }, most);
    reader.finish();
    return read;
}

void check_short(const Findings& findings) {
    for (const Problem& problem : findings.problems()) {
        CHECK(letters_in(words_of(problem, catalogue_in(Language::english)).found) <= caps::line);
        CHECK(letters_in(words_of(problem, catalogue_in(Language::english)).expected) <=
              caps::line);
        CHECK(letters_in(words_of(problem, catalogue_in(Language::english)).advice) <= caps::line);
        CHECK(letters_in(problem.path) <= caps::line);
        CHECK(problem.excerpt.size() <= 100);
    }
}

} // namespace

TEST_CASE("An object has a cap on its members, and is not read past it") {
    CHECK(Parsed(members(caps::members)).findings.none());
    const Parsed over(members(80'000));
    CHECK(problem_ids(over.findings) == Ids{"too-many"});
    CHECK(over.root().kind == Value::Kind::null);
    CHECK(Parsed(members(caps::members + 1)).findings.problems().size() == 1);
}

TEST_CASE("A name repeated among many is found, wherever it stands") {
    std::string text = members(caps::members - 1);
    text.replace(text.size() - 1, 1, ",\"k0\":2}");
    CHECK(problem_ids(Parsed(text).findings) == Ids{"member-repeated"});
    const Parsed apart(R"({"a": {"x": 1}, "b": {"x": 1}})"); // in two objects, it is none
    CHECK(apart.findings.none());
}

TEST_CASE("A text has a cap on its values, those of the members counted") {
    const auto found = [](const std::string& text, std::size_t most) {
        Findings findings;
        static_cast<void>(parse_json(std::make_shared<Source>("t", text), findings, most));
        return problem_ids(findings);
    };
    CHECK(found("[1, {\"a\": true}, []]", 5).empty());
    CHECK(found("[1, {\"a\": true}, []]", 4) == Ids{"too-many"});
    CHECK(found(repeated(200'000, "[", "[]", "]"), caps::sent_values) == Ids{"too-many"});
}

TEST_CASE("A list with more entries than its cap is not read at all") {
    const auto full = read_list(repeated(32, "{\"list\": [", "1", "]}"), 32);
    CHECK((full.first == 32 && full.second.none()));
    const auto over = read_list(repeated(33, "{\"list\": [", "1", "]}"), 32);
    CHECK(over.first == 0);
    REQUIRE(problem_ids(over.second) == Ids{"too-many"});
    CHECK(over.second.problems()[0].path == "/list");
    CHECK(words_of(over.second.problems()[0], catalogue_in(Language::english)).found ==
          "a list of 33 entries");
    CHECK(words_of(over.second.problems()[0], catalogue_in(Language::english)).expected ==
          "at most 32 entries");
}

TEST_CASE("A list of lots has a cap on its columns and rows, and each column once") {
    CHECK(ids_of_csv(columns(caps::columns)).empty());
    CHECK(ids_of_csv(columns(100'000)) == Ids{"too-many"});
    CHECK(ids_of_csv("c0,c1," + columns(5)) == Ids{"csv-column-repeated"});
    std::string rows = "a\n";
    for (std::size_t i = 0; i < caps::list; ++i) rows += "1\n";
    CHECK(ids_of_csv(rows).empty());
    CHECK(ids_of_csv(rows + "1\n") == Ids{"too-many"});
}

TEST_CASE("Of many mistakes the first hundred are told, and that there are more") {
    const Parsed parsed(members(300));
    Findings findings;
    Reader(parsed.root(), Path{}, findings).finish();
    REQUIRE(findings.full());
    REQUIRE(findings.problems().size() == caps::problems + 1);
    CHECK(name_of(findings.problems()[caps::problems - 1].id) == "member-unknown");
    CHECK(name_of(findings.problems().back().id) == "too-many-problems");
    Findings few;
    Reader(Parsed(members(99)).root(), Path{}, few).finish();
    CHECK_FALSE(few.full());
}

TEST_CASE("Where no more is told, nothing counts as sound") {
    const Parsed parsed(members(300));
    Findings findings;
    Reader(parsed.root(), Path{}, findings).finish();
    Reader after(parsed.root(), Path{}, findings);
    static_cast<void>(after.money("not-there"));
    CHECK_FALSE(after.sound());
}

TEST_CASE("A message repeats a line at most of what was written") {
    const std::string million(1'000'000, '7');
    for (const std::string& text :
         {"{\"it\": \"" + million + "\"}", "{\"it\": " + million + "}", "{\"" + million + "\": 1}",
          "{\"it\": 1e" + million + "}", "{\"it\": " + million + "x}",
          "{\"" + million + "\": 1, \"" + million + "\": 2}"}) {
        Parsed parsed(text);
        Findings findings = std::move(parsed.findings);
        if (findings.none()) {
            Reader reader(parsed.root(), Path{}, findings);
            static_cast<void>(reader.date("it"));
            reader.finish();
        }
        REQUIRE_FALSE(findings.none());
        check_short(findings);
    }
}

TEST_CASE("The excerpt of a line that is a whole file is found without reading it again") {
    const Source source("t", "first\nsecond\r\n\nlast");
    CHECK(source.line(1) == "first");
    CHECK(source.line(2) == "second");
    CHECK(source.line(3).empty());
    CHECK(source.line(4) == "last");
}
