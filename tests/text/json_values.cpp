// JSON values of every kind: what is kept of each, and where it stands.
#include <shown.hpp>

#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

std::string at(const Value& value) {
    const auto position = value.place.source->position(value.place.begin);
    return std::to_string(position.line) + ":" + std::to_string(position.column);
}

} // namespace

TEST_CASE("A value alone in a text, by kind: literal and stretch") {
    struct Row {
        const char* text;
        Value::Kind kind;
        const char* literal;
    };
    for (const Row& row : {
             Row{"null", Value::Kind::null, "null"},
             Row{"true", Value::Kind::boolean, "true"},
             Row{"false", Value::Kind::boolean, "false"},
             Row{"0", Value::Kind::number, "0"},
             Row{"-0", Value::Kind::number, "-0"},
             Row{"412900.00", Value::Kind::number, "412900.00"},
             Row{"6.1250000000000000000001", Value::Kind::number, "6.1250000000000000000001"},
             Row{"1E+5", Value::Kind::number, "1E+5"},
             Row{"-2.50e-3", Value::Kind::number, "-2.50e-3"},
             Row{"123456789012345678901234567890", Value::Kind::number,
                 "123456789012345678901234567890"},
             Row{"1e308", Value::Kind::number, "1e308"},
             Row{R"("")", Value::Kind::text, ""},
             Row{R"("plain")", Value::Kind::text, "plain"},
             Row{R"("a, b: {c} [d]")", Value::Kind::text, "a, b: {c} [d]"},
             Row{R"("\"\\\/\b\f\n\r\t")", Value::Kind::text, "\"\\/\b\f\n\r\t"},
             Row{R"("\u00e9\u20ac\ud83c\udfe0")", Value::Kind::text, "é€🏠"},
             Row{"\"é€🏠\"", Value::Kind::text, "é€🏠"},
             Row{R"("ends in \\")", Value::Kind::text, "ends in \\"},
             Row{"[]", Value::Kind::list, ""},
             Row{"{ }", Value::Kind::object, ""},
         }) {
        CAPTURE(row.text);
        const Parsed alone(row.text);
        INFO(listing(alone.findings));
        REQUIRE(alone.findings.none());
        CHECK(alone.root().kind == row.kind);
        CHECK(alone.root().literal == row.literal);
        CHECK(stretch(alone.root()) == row.text);
        // The same with blanks of every kind around it, inside a list.
        const Parsed nested("\t[\r\n " + std::string(row.text) + " \n, 1]");
        REQUIRE(nested.findings.none());
        REQUIRE(nested.root().items.size() == 2);
        CHECK(nested.root().items[0].literal == row.literal);
        CHECK(stretch(nested.root().items[0]) == row.text);
        CHECK(at(nested.root().items[0]) == "2:2");
        CHECK(stretch(nested.root().items[1]) == "1");
    }
}

TEST_CASE("Lists and objects span their brackets, members keep their order and names' places") {
    const Parsed parsed("{\"b\": [1, [ ], {\"x\" :\n2}],\n  \"a\\u0062\": {}}");
    REQUIRE(parsed.findings.none());
    const Value& root = parsed.root();
    REQUIRE(root.keys.size() == 2);
    CHECK(root.keys[0].name == "b");
    CHECK(root.keys[1].name == "ab");
    CHECK(root.keys[1].place.source->position(root.keys[1].place.begin).line == 3);
    CHECK(root.keys[1].place.source->position(root.keys[1].place.begin).column == 3);
    CHECK(root.keys[1].place.end - root.keys[1].place.begin == 9); // as written, with its quotes
    const Value& list = *root.find("b");
    CHECK(stretch(list) == "[1, [ ], {\"x\" :\n2}]");
    CHECK(stretch(list.items[1]) == "[ ]");
    CHECK(stretch(list.items[2]) == "{\"x\" :\n2}");
    CHECK(at(*list.items[2].find("x")) == "2:1");
    CHECK(stretch(*root.find("ab")) == "{}");
    CHECK(root.find("c") == nullptr);
    CHECK(stretch(root).size() == parsed.document.source->text().size());
}

TEST_CASE("Places stay right behind a byte order mark and after a document has moved") {
    Parsed parsed("\xEF\xBB\xBF[10,\n20]");
    REQUIRE(parsed.findings.none());
    const Document moved = std::move(parsed.document);
    CHECK(stretch(moved.root.items[0]) == "10");
    CHECK(stretch(moved.root.items[1]) == "20");
    CHECK(at(moved.root.items[1]) == "2:1");
}

TEST_CASE("One name may stand in several objects, also in one inside the other") {
    const Parsed parsed(R"({"a": {"a": 1, "b": {"a": 2}}, "c": [{"a": 3}, {"a": 4}]})");
    CHECK(parsed.findings.none());
    CHECK(parsed.root().find("a")->find("b")->find("a")->literal == "2");
}

TEST_CASE("Thirty-two levels are read and the thirty-third is refused where it opens") {
    const auto nested = [](int levels) {
        return std::string(static_cast<std::size_t>(levels), '[') +
               std::string(static_cast<std::size_t>(levels), ']');
    };
    CHECK(Parsed(nested(deepest_nesting)).findings.none());
    const Parsed deeper(nested(deepest_nesting + 1));
    REQUIRE(problem_ids(deeper.findings) == Ids{"too-deep"});
    CHECK(place_of(deeper.findings.problems()[0]) == "1:33");
    CHECK(deeper.root().kind == Value::Kind::null);
    // A hundred thousand levels cost no more than the first few.
    CHECK(problem_ids(Parsed(nested(100'000)).findings) == Ids{"too-deep"});
    std::string objects;
    for (int i = 0; i <= deepest_nesting; ++i) objects += "{\"a\":";
    CHECK(problem_ids(Parsed(objects).findings) == Ids{"too-deep"});
}

TEST_CASE("Lines end with a line feed, with or without a carriage return, columns count bytes") {
    const Parsed parsed("[1,\r\n2,\n\"é\", 3]");
    REQUIRE(parsed.findings.none());
    CHECK(at(parsed.root().items[1]) == "2:1");
    CHECK(at(parsed.root().items[3]) == "3:7"); // é takes two bytes
    CHECK(parsed.document.source->line(1) == "[1,");
    CHECK(parsed.document.source->line(2) == "2,");
    CHECK(parsed.document.source->line(3) == "\"é\", 3]");
}
