// Names as they may be: every language, but nothing that steers a terminal or turns a line around.
#include <shown.hpp>

#include <quoin/text/caps.hpp>
#include <quoin/text/plain.hpp>
#include <quoin/text/reader.hpp>

#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const std::vector<std::string> steering = {"\x1b[31m",
                                           "\a",
                                           "a\nb",
                                           "a\tb",
                                           "\x7f",
                                           "\xc2\x9b"
                                           "31m",
                                           "\u061c",
                                           "\u200e",
                                           "\u200f",
                                           "\u202a",
                                           "\u202e",
                                           "\u2066",
                                           "\u2069",
                                           "a\u2028b",
                                           "a\u2029b"};

Ids ids_of_name(const std::string& name) {
    Findings findings;
    Value value;
    value.kind = Value::Kind::object;
    value.keys.push_back({"name", {}});
    value.items.emplace_back();
    value.items[0].kind = Value::Kind::text;
    value.items[0].literal = name;
    Reader reader(value, Path{}, findings);
    static_cast<void>(reader.name("name"));
    reader.finish();
    return problem_ids(findings);
}

} // namespace

TEST_CASE("Letters of every language are plain, what steers is not") {
    for (const char* name : {"Ann Weir", "José Núñez", "Zoë \"Zee\" O'Neil", "דנה לוי", "مريم",
                             "李小龍", "Jr. & Sr.", "👩‍👩‍👧", ""}) {
        CAPTURE(name);
        CHECK(is_plain(name));
        CHECK(made_visible(name) == name);
    }
    for (const std::string& text : steering) {
        CAPTURE(text);
        CHECK_FALSE(is_plain(text));
        CHECK(is_plain(made_visible(text)));
    }
    CHECK(made_visible("a\x1b[0m\u202e") == "a\\u001B[0m\\u202E");
    CHECK(made_visible("a\n\x1b", "\n") == "a\n\\u001B");
}

TEST_CASE("What is typed may be bytes that are no letters: each is told by itself") {
    const std::string strays(40, '\x80'); // the second byte of a letter, without a first
    CHECK_FALSE(is_plain(strays));
    CHECK(letters_in(strays) == 40);
    CHECK(cut(strays, 3) == "\x80\x80…");
    CHECK(made_visible("a\x80\x80") == "a\\u0080\\u0080");
    CHECK(made_visible("é" + std::string(2, '\x80')) == "é\\u0080\\u0080");
    CHECK(letter_at("\xf0\x9f\x91\xa9\x80", 0).size() == 4);
    CHECK(letters_in("\xff\xc3") == 2); // no first byte, and one without its second
    CHECK(code_point("👩") == 0x1F469);
}

TEST_CASE("A text is cut between letters, and says so") {
    CHECK(cut("abc", 3) == "abc");
    CHECK(cut("abcd", 3) == "ab…");
    CHECK(cut("ééé", 3) == "ééé");
    CHECK(cut("éééé", 3) == "éé…");
    CHECK(letters_in("é李a") == 3);
}

TEST_CASE("A name is one line of at most 120 letters, without what steers") {
    std::string longest;
    for (std::size_t i = 0; i < caps::name; ++i) longest += "é";
    CHECK(ids_of_name(longest).empty());
    CHECK(ids_of_name(longest + "e") == Ids{"text-too-long"});
    CHECK(ids_of_name(std::string(3000, 'x')) == Ids{"text-too-long"});
    for (const std::string& text : steering) {
        CAPTURE(text);
        CHECK(ids_of_name("Ann " + text) == Ids{"text-not-plain"});
    }
}

TEST_CASE("A message and its excerpt show what steers, and do not do it") {
    const Parsed broken("{\"name\": \"\x1b[2J\u202e\"}"); // no JSON: a control within a text
    REQUIRE_FALSE(broken.findings.none());
    for (const Problem& problem : broken.findings.problems()) {
        CHECK(is_plain(words_of(problem, catalogue_in(Language::english)).found));
        CHECK(is_plain(problem.excerpt));
    }
    const Parsed sound("{\"\\u001b[2J\": 1}");
    Findings findings;
    Reader(sound.root(), Path{}, findings).finish();
    REQUIRE(problem_ids(findings) == Ids{"member-unknown"});
    CHECK(is_plain(words_of(findings.problems()[0], catalogue_in(Language::english)).found));
}
