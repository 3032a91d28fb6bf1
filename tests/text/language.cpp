// Texts of a file that are written in several languages: which one is read, and what is refused.
#include <shown.hpp>

#include <algorithm>

#include <quoin/text/language.hpp>
#include <quoin/text/reader.hpp>
#include <quoin/words/problem_words.hpp>

#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// Without what only lays it out.
std::string unbroken(std::string json) {
    for (std::size_t at = 0; (at = json.find('\n', at)) != std::string::npos;) {
        json.erase(at, std::min(json.find_first_not_of(" \n", at), json.size()) - at);
    }
    return json;
}

/// What a text becomes in a language.
std::string chosen(const std::string& text, Language language) {
    Parsed parsed(text);
    REQUIRE(parsed.findings.none());
    choose_texts(parsed.document, language, parsed.findings);
    INFO(listing(parsed.findings));
    CHECK(parsed.findings.none());
    return unbroken(write_json(parsed.document.root));
}

} // namespace

TEST_CASE("A text in several languages is read in the one asked for") {
    const std::string book = R"({"id": "a", "options": [
        {"name": {"en": "Cedar deck", "es": "Terraza de cedro"}, "note": "as built"}]})";
    CHECK(chosen(book, Language::english) ==
          R"({"id": "a","options": [{"name": "Cedar deck","note": "as built"}]})");
    CHECK(chosen(book, Language::spanish) ==
          R"({"id": "a","options": [{"name": "Terraza de cedro","note": "as built"}]})");
}

TEST_CASE("Where a language is not there the first is read") {
    CHECK(chosen(R"([{"es": "cerca"}])", Language::english) == R"(["cerca"])");
    CHECK(chosen(R"([{"en": "fence"}])", Language::spanish) == R"(["fence"])");
    CHECK(chosen(R"([{"comment": "by hand", "en": "fence"}])", Language::spanish) ==
          R"(["fence"])");
}

TEST_CASE("What has no language among its members is no text") {
    const std::string json = R"([{"id": "x"}, {}, {"lot": {"enough": 1}}])";
    Parsed before(json);
    CHECK(chosen(json, Language::spanish) == unbroken(write_json(before.root())));
}

TEST_CASE("A language that is none and what is no text are refused where they stand") {
    for (const auto& [text, id, path, place] :
         {std::tuple(R"([{"en": "deck", "sp": "terraza"}])", "member-unknown", "/0/sp", "1:17"),
          std::tuple(R"([{"en": "deck", "es": 7}])", "wrong-kind", "/0/es", "1:23"),
          std::tuple(R"([{"en": {"es": "x"}}])", "wrong-kind", "/0/en", "1:9")}) {
        CAPTURE(text);
        Parsed parsed(text);
        choose_texts(parsed.document, Language::english, parsed.findings);
        INFO(listing(parsed.findings));
        REQUIRE(problem_ids(parsed.findings) == Ids{id});
        CHECK(parsed.findings.problems()[0].path == path);
        CHECK(place_of(parsed.findings.problems()[0]) == place);
    }
}

/// What was read, and what was wrong: before the texts were chosen, or while they were read.
std::string read_in(const std::string& text, Language language, std::optional<Language> texts_in) {
    Findings findings;
    Document document =
        parse_json(std::make_shared<Source>("t.json", text), findings, caps::values, texts_in);
    choose_texts(document, language, findings);
    return write_json(document.root) + listing(findings);
}

TEST_CASE("Texts chosen while they are read are those chosen afterwards") {
    for (const std::string text :
         {R"({"name": {"en": "deck", "es": "terraza"}, "id": "x", "more": [{"es": "cerca"}, {}]})",
          R"({"comment": "of a builder", "es": "cerca"})",
          R"([[{"en": "a"}], {"no": {"en": "b"}}])",
          R"({"rows": [[1, "en"], {"en": "fence", "comment": 7, "es": "cerca"}], "last": null})",
          R"([{"en": "deck", "sp": "terraza"}, {"en": "a", "es": "b"}])",
          R"([{"en": "deck", "es": 7}])", R"([{"en": {"es": "x"}}])", R"({"es": {"en": "x"}})"}) {
        for (const auto& language : codes<Language>) {
            CAPTURE(text, language.code);
            CHECK(read_in(text, language.meaning, language.meaning) ==
                  read_in(text, language.meaning, std::nullopt));
        }
    }
}

TEST_CASE("A column of a list in several languages is read in the one asked for, else in any") {
    const auto noted = [](const std::string& csv, Language language) {
        Findings findings;
        Document list = parse_csv(std::make_shared<Source>("lots.csv", csv), findings);
        CHECK(findings.none());
        choose_column(list, "note", language);
        return unbroken(write_json(list.root));
    };
    const std::string both = "id,note.en,note.es\n1,Wide,Ancho\n2,,Largo\n3,,\n";
    CHECK(noted(both, Language::english) ==
          R"([{"id": "1","note": "Wide"},{"id": "2","note": "Largo"},{"id": "3"}])");
    CHECK(noted(both, Language::spanish) ==
          R"([{"id": "1","note": "Ancho"},{"id": "2","note": "Largo"},{"id": "3"}])");
    const std::string plain = "note,note.es,notes\nWide,Ancho,x\nDeep,,y\n";
    CHECK(noted(plain, Language::english) ==
          R"([{"notes": "x","note": "Wide"},{"notes": "y","note": "Deep"}])");
    CHECK(noted(plain, Language::spanish) ==
          R"([{"notes": "x","note": "Ancho"},{"notes": "y","note": "Deep"}])");
    CHECK(noted("note.fr\nlarge\n", Language::english) == R"([{"note.fr": "large"}])");
}

TEST_CASE("Where a language is wrong the languages that there are are told") {
    const Catalogue& say = catalogue_in(Language::english);
    Parsed beside(R"([{"en": "deck", "french": "terrasse"}])");
    choose_texts(beside.document, Language::english, beside.findings);
    REQUIRE(problem_ids(beside.findings) == Ids{"member-unknown"});
    const ProblemWords one = words_of(beside.findings.problems()[0], say);
    CHECK(one.found == "the unknown language \"french\"");
    CHECK(one.expected == "one of \"en\", \"es\"");

    Parsed alone(R"({"name": {"sp": "terraza"}})");
    choose_texts(alone.document, Language::english, alone.findings);
    Reader reader(alone.document.root, Path{}, alone.findings);
    CHECK(reader.text("name").empty());
    REQUIRE(problem_ids(alone.findings) == Ids{"wrong-kind"});
    CHECK(words_of(alone.findings.problems()[0], say).expected.ends_with(": en or es"));
}
