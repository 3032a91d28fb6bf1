// JSON and CSV with places and literals; typed reading; near names.
#include <shown.hpp>

#include <quoin/text/reader.hpp>

#include <quoin/text/problems.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Findings findings_of(std::string text) {
    Findings findings;
    static_cast<void>(parse_json(std::make_shared<Source>("t.json", std::move(text)), findings));
    return findings;
}

Document csv(std::string text, Findings& findings) {
    return parse_csv(std::make_shared<Source>("t.csv", std::move(text)), findings);
}

std::string stretch(const Document& document, const Value& value) {
    return std::string(
        document.source->text().substr(value.place.begin, value.place.end - value.place.begin));
}

} // namespace

TEST_CASE("Every value keeps its literal and its place") {
    const Document document =
        json("{\n  \"a\": 1.50, \"b\\\"c\": [true , null,-2e3],\n\t\"d\": {\"e\": \"x\\ny\"}\n}");
    CHECK(document.root.find("a")->literal == "1.50");
    CHECK(stretch(document, *document.root.find("a")) == "1.50");
    const Value& list = *document.root.find("b\"c");
    CHECK(stretch(document, list) == "[true , null,-2e3]");
    CHECK(list.items[2].literal == "-2e3");
    CHECK(stretch(document, list.items[0]) == "true");
    const Value& text = *document.root.find("d")->find("e");
    CHECK(text.literal == "x\ny");
    CHECK(stretch(document, text) == "\"x\\ny\"");
    const auto position = document.source->position(text.place.begin);
    CHECK(position.line == 3);
    CHECK(position.column == 13);
}

TEST_CASE("What is no JSON is said with its line and column") {
    struct Row {
        const char* text;
        const char* id;
        int line;
        int column;
    };
    for (const Row& row : {
             Row{"", "not-json", 1, 1},
             Row{"{\"a\": 1,\n \"a\": 2}", "member-repeated", 2, 2},
             Row{"{\"a\" 1}", "not-json", 1, 6},
             Row{"[1,\n 2,\n }", "not-json", 3, 2},
             Row{"{\"a\": 1e400}", "number-too-large", 1, 7},
             Row{"{\"a\": \"\xff\"}", "not-utf8", 1, 8},
             Row{"[1] 2", "not-json", 1, 5},
         }) {
        CAPTURE(row.text);
        const Findings findings = findings_of(row.text);
        REQUIRE(findings.problems().size() == 1);
        CHECK(name_of(findings.problems().front().id) == row.id);
        CHECK(findings.problems().front().line == row.line);
        CHECK(findings.problems().front().column == row.column);
    }
    CHECK(findings_of(std::string(31, '[') + std::string(31, ']')).none());
    CHECK(name_of(findings_of(std::string(33, '[')).problems().front().id) == "too-deep");
    CHECK(findings_of("\xEF\xBB\xBF{\"a\": 1}").none()); // a byte order mark is no mistake
}

TEST_CASE("CSV with quotes, doubled quotes, line ends of every kind and empty cells") {
    Findings findings;
    const Document document =
        csv("id,note,size\r\n1,\"corner, \"\"wide\"\"\",62\r\n\n2,,\n3,\"two\nlines\",5", findings);
    REQUIRE(findings.none());
    REQUIRE(document.root.items.size() == 3);
    CHECK(document.root.items[0].find("note")->literal == "corner, \"wide\"");
    CHECK(document.root.items[1].find("note") == nullptr);
    CHECK(document.root.items[2].find("note")->literal == "two\nlines");
    CHECK(document.root.items[2].find("size")->literal == "5");
}

TEST_CASE("A reader takes each member as its type, and says all that is wrong") {
    const Document document = json(
        R"({"id": "A b", "price": "1.005", "when": "2026-02-30", "count": 2.5, "rate": "101",
            "flag": "yes", "list": [1, "x"], "extra": 0})");
    Findings findings;
    Reader reader(document.root, Path{}, findings);
    CHECK(reader.id("id") == "A b");
    CHECK(reader.money("price") == Money{});
    CHECK(reader.date("when") == Date{});
    CHECK(reader.whole("count", 1, 9) == 1);
    CHECK(reader.rate("rate") == Rate{});
    CHECK_FALSE(reader.flag_or("flag", false));
    CHECK(reader.texts("list") == std::vector<std::string>{"x"});
    CHECK(reader.text("name").empty());
    reader.finish();
    std::vector<std::string> ids;
    for (const Problem& problem : findings.problems()) ids.emplace_back(name_of(problem.id));
    CHECK(ids == std::vector<std::string>{"not-an-id", "not-money", "not-a-date",
                                          "not-a-whole-number", "not-a-rate", "wrong-kind",
                                          "wrong-kind", "member-missing", "member-unknown"});
    CHECK(findings.problems()[6].path == "/list/0");
}

TEST_CASE("The nearest name is guessed, and none where none is near") {
    const std::vector<std::string> names = {"kitchen-counters", "kitchen-cabinets", "deck"};
    CHECK(nearest("kitchen-countres", names) == "kitchen-counters");
    CHECK(nearest("dek", names) == "deck");
    CHECK(nearest("fireplace", names).empty());
}
