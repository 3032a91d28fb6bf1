// What is no JSON: one problem, with the line and column of what is wrong.
#include <shown.hpp>

#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

struct Row {
    std::string text;
    const char* id;
    const char* place;
};

void check_rows(const std::vector<Row>& rows) {
    for (const Row& row : rows) {
        CAPTURE(row.text);
        const Parsed parsed(row.text);
        INFO(listing(parsed.findings));
        REQUIRE(problem_ids(parsed.findings) == Ids{row.id});
        const Problem& problem = parsed.findings.problems().front();
        CHECK(place_of(problem) == row.place);
        CHECK(problem.file == "t.json");
        CHECK_FALSE(words_of(problem, catalogue_in(Language::english)).found.empty());
        CHECK_FALSE(words_of(problem, catalogue_in(Language::english)).expected.empty());
        CHECK(problem.width >= 1);
        CHECK(parsed.root().kind == Value::Kind::null); // nothing half read
    }
}

/// JSON inside a list on the third line, so that neither line nor column is the first.
std::string inside(const std::string& text) { return "[\n1,\n  " + text; }

} // namespace

TEST_CASE("Empty and truncated texts are wrong at their end, an open text at its quote") {
    check_rows({
        {"", "not-json", "1:1"},
        {"  \n ", "not-json", "2:2"},
        {"\xEF\xBB\xBF", "not-json", "1:4"},
        {"{", "not-json", "1:2"},
        {"[", "not-json", "1:2"},
        {"[1", "not-json", "1:3"},
        {"[1,", "not-json", "1:4"},
        {"[1,\n", "not-json", "2:1"},
        {"{\"a\"", "not-json", "1:5"},
        {"{\"a\":", "not-json", "1:6"},
        {"{\"a\": [true", "not-json", "1:12"},
        {"\"abc", "not-json", "1:1"},
        {"{\"a\": \"abc\\\"}", "not-json", "1:7"},
        {inside("\"abc"), "not-json", "3:3"},
    });
}

TEST_CASE("A token that does not belong is wrong where it stands") {
    check_rows({
        {"]", "not-json", "1:1"},
        {"}", "not-json", "1:1"},
        {",", "not-json", "1:1"},
        {":", "not-json", "1:1"},
        {"[1 2]", "not-json", "1:4"},
        {"[1,]", "not-json", "1:4"},
        {"[1,,2]", "not-json", "1:4"},
        {"[,1]", "not-json", "1:2"},
        {"[1:2]", "not-json", "1:3"},
        {"[1}", "not-json", "1:3"},
        {"{,}", "not-json", "1:2"},
        {"{\"a\": 1,}", "not-json", "1:9"},
        {"{\"a\" 1}", "not-json", "1:6"},
        {"{\"a\"::1}", "not-json", "1:6"},
        {"{\"a\":,}", "not-json", "1:6"},
        {"{\"a\",1}", "not-json", "1:5"},
        {"{\"a\": 1]", "not-json", "1:8"},
        {"{\"a\": 1\n\"b\": 2}", "not-json", "2:1"},
        {"{a: 1}", "not-json", "1:2"},
        {"{'a': 1}", "not-json", "1:2"},
        {"{1: 2}", "not-json", "1:2"},
        {"[1] 2", "not-json", "1:5"},
        {"{} {}", "not-json", "1:4"},
        {"[1],", "not-json", "1:4"},
        {inside("2,,3]"), "not-json", "3:5"},
        {inside("2 ,\n\n ,3]"), "not-json", "5:2"},
    });
}

TEST_CASE("What is no number, word or text is wrong at its first byte") {
    check_rows({
        {"[1.]", "not-json", "1:2"},
        {"[.5]", "not-json", "1:2"},
        {"[+1]", "not-json", "1:2"},
        {"[-]", "not-json", "1:2"},
        {"[1e]", "not-json", "1:2"},
        {"[$5]", "not-json", "1:2"},
        {"[NaN]", "not-json", "1:2"},
        {"[tru]", "not-json", "1:2"},
        {"[True]", "not-json", "1:2"},
        {"[nul]", "not-json", "1:2"},
        {"// a remark\n[1]", "not-json", "1:1"},
        {"[1, /* a remark */ 2]", "not-json", "1:5"},
        {"[\"a\tb\"]", "not-json", "1:2"}, // a raw tab inside a text
        {"[\"a\nb\"]", "not-json", "1:2"},
        {"[\"\\q\"]", "not-json", "1:2"},
        {"[\"\\u12\"]", "not-json", "1:2"},
        {"[\"\\ud800\"]", "not-json", "1:2"}, // half of a surrogate pair
        {inside("#2]"), "not-json", "3:3"},
    });
}

TEST_CASE("A null byte ends no text early") {
    check_rows({
        {std::string("[1]\0", 4), "not-json", "1:4"},
        {std::string("[1]\0{\"a\": 2}", 12), "not-json", "1:4"},
        {std::string("\0", 1), "not-json", "1:1"},
        {std::string("[1,\0 2]", 7), "not-json", "1:4"},
        {std::string("[\"a\0b\"]", 7), "not-json", "1:2"},
    });
}

TEST_CASE("A member a second time is refused at its second name") {
    check_rows({
        {"{\"a\": 1, \"a\": 1}", "member-repeated", "1:10"},
        {"{\"a\": 1,\n \"b\": 2,\n \"a\": 3}", "member-repeated", "3:2"},
        {"{\"a\": 1, \"\\u0061\": 2}", "member-repeated", "1:10"}, // the same name, escaped
        {"[{\"x\": {\"a\": 1, \"a\": 1}}]", "member-repeated", "1:17"},
        {"{\"\": 1, \"\": 2}", "member-repeated", "1:9"},
    });
}

TEST_CASE("A number too large for any figure is refused, a long one is kept") {
    check_rows({
        {"[1e400]", "number-too-large", "1:2"},
        {"[-1e400]", "number-too-large", "1:2"},
        {inside("1" + std::string(400, '0') + "]"), "number-too-large", "3:3"},
    });
    const Parsed small("[1e-400, 1" + std::string(300, '0') + "]");
    CHECK(small.findings.none());
    CHECK(small.root().items[0].literal == "1e-400");
    CHECK(small.root().items[1].literal.size() == 301);
}

TEST_CASE("Bytes that are no UTF-8 are refused, in texts and between them") {
    // RFC 3629: no overlong forms, no surrogates, nothing above U+10FFFF.
    for (const char* bad :
         {"\xff", "\x80", "\xC0\x80", "\xC3", "\xE0\x80\x80", "\xE2\x82", "\xED\xA0\x80",
          "\xF0\x80\x80\x80", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xE2\x28\xA1"}) {
        const Parsed in_text("{\"a\":\n\"" + std::string(bad) + "\"}");
        CAPTURE(listing(in_text.findings));
        CHECK(problem_ids(in_text.findings) == Ids{"not-utf8"});
        CHECK(in_text.findings.problems().front().line == 2);
        const Parsed in_name("{\"" + std::string(bad) + "\": 1}");
        CHECK(problem_ids(in_name.findings) == Ids{"not-utf8"});
    }
    CHECK(Parsed("[\"\xF4\x8F\xBF\xBF\"]").findings.none()); // the last code point there is
    CHECK(problem_ids(Parsed("[\xff]").findings).size() == 1);
}
