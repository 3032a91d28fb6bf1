// CSV: quotes, line ends, cells and their places (RFC 4180).
#include <shown.hpp>

#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

struct Table {
    Findings findings; // before the document, whose reading fills them
    Document document;

    explicit Table(std::string text)
        : document(parse_csv(std::make_shared<Source>("t.csv", std::move(text)), findings)) {}
    [[nodiscard]] std::size_t rows() const { return document.root.items.size(); }
    /// The cell's text; nullptr where it was left out.
    [[nodiscard]] const std::string* cell(std::size_t row, const char* column) const {
        const Value* value = document.root.items.at(row).find(column);
        return value != nullptr ? &value->literal : nullptr;
    }
};

const std::string* const left_out = nullptr;

} // namespace

TEST_CASE("Rows and cells under every line end, with or without a last one") {
    for (const char* text :
         {"a,b\n1,2\n3,4\n", "a,b\n1,2\n3,4", "a,b\r\n1,2\r\n3,4\r\n", "a,b\r\n1,2\r\n3,4",
          "\xEF\xBB\xBF"
          "a,b\n1,2\n3,4",
          "\n\na,b\n\n1,2\r\n\r\n3,4\n\n"}) {
        CAPTURE(text);
        const Table table(text);
        REQUIRE(table.findings.none());
        REQUIRE(table.document.root.kind == Value::Kind::list);
        REQUIRE(table.rows() == 2);
        CHECK(*table.cell(0, "a") == "1");
        CHECK(*table.cell(0, "b") == "2");
        CHECK(*table.cell(1, "a") == "3");
        CHECK(*table.cell(1, "b") == "4");
    }
}

TEST_CASE("A header alone is a list of nothing") {
    const Table table("id,premium\n");
    CHECK(table.findings.none());
    CHECK(table.document.root.kind == Value::Kind::list);
    CHECK(table.rows() == 0);
}

TEST_CASE("Quoted cells hold commas, line ends and doubled quotes, blanks are kept") {
    const Table table("id,note\n"
                      "1,\"a, b\"\n"
                      "2,\"say \"\"wide\"\"\"\n"
                      "3,\"first\r\nsecond\"\n"
                      "4,\"\"\"\"\n"
                      "5, padded \n"
                      "\"6\",\"\"\n"
                      "7,5 \" wide\n");
    INFO(listing(table.findings));
    REQUIRE(table.findings.none());
    REQUIRE(table.rows() == 7);
    CHECK(*table.cell(0, "note") == "a, b");
    CHECK(*table.cell(1, "note") == "say \"wide\"");
    CHECK(*table.cell(2, "note") == "first\r\nsecond");
    CHECK(*table.cell(3, "note") == "\"");
    CHECK(*table.cell(4, "note") == " padded ");
    CHECK(*table.cell(5, "id") == "6");
    CHECK(table.cell(5, "note") == left_out);
    CHECK(*table.cell(6, "note") == "5 \" wide"); // a quote inside a bare cell is a character
}

TEST_CASE("Empty cells are left out, wherever they stand") {
    const Table table("a,b,c\n,,\n,2,\n1,,3\n");
    REQUIRE(table.findings.none());
    REQUIRE(table.rows() == 3);
    CHECK(table.document.root.items[0].keys.empty());
    CHECK(table.cell(1, "a") == left_out);
    CHECK(*table.cell(1, "b") == "2");
    CHECK(table.cell(1, "c") == left_out);
    CHECK(*table.cell(2, "c") == "3");
}

TEST_CASE("A cell knows its place, its quotes included, and its column's name") {
    const Table table("id,note\n1,\"two\nlines\"\n2,\"x\"");
    REQUIRE(table.rows() == 2);
    const Value& first = *table.document.root.items[0].find("note");
    CHECK(stretch(first) == "\"two\nlines\"");
    const Value& last = *table.document.root.items[1].find("note");
    const auto position = table.document.source->position(last.place.begin);
    CHECK(position.line == 4);
    CHECK(position.column == 3);
    const Key& key = table.document.root.items[1].keys[1];
    CHECK(key.name == "note");
    CHECK(table.document.source->position(key.place.begin).line == 1);
    CHECK(table.document.source->position(key.place.begin).column == 4);
}

TEST_CASE("Rows with too few or too many cells are all reported, the others are kept") {
    const Table table("a,b\n1\n2,3\n4,5,6\n7,8\n9,\n");
    CHECK(problem_ids(table.findings) == Ids{"csv-cells", "csv-cells"});
    CHECK(place_of(table.findings.problems()[0]) == "2:1");
    CHECK(words_of(table.findings.problems()[0], catalogue_in(Language::english)).found ==
          "a row of 1 cells");
    CHECK(place_of(table.findings.problems()[1]) == "4:1");
    CHECK(words_of(table.findings.problems()[1], catalogue_in(Language::english)).found ==
          "a row of 3 cells");
    CHECK(table.rows() == 3);
}

TEST_CASE("A quote that is not closed, or not alone in its cell, is shown where it is") {
    struct Row {
        const char* text;
        const char* place;
    };
    for (const Row& row : {
             Row{"a,b\n1,\"open\n2,3\n", "2:3"},
             Row{"a,b\n1,\"x\"y\n", "2:6"},
             Row{"a,b\n\"x\" ,2\n", "2:4"},
             Row{"\"a\n", "1:1"},
             Row{"a,b\n1,\"\"\"\n", "2:3"},
         }) {
        CAPTURE(row.text);
        const Table table(row.text);
        REQUIRE(problem_ids(table.findings) == Ids{"csv-quote"});
        CHECK(place_of(table.findings.problems()[0]) == row.place);
    }
}

TEST_CASE("A column a second time is refused at its second name") {
    const Table table("id,premium,id\n1,2,3\n");
    REQUIRE(problem_ids(table.findings) == Ids{"csv-column-repeated"});
    CHECK(place_of(table.findings.problems()[0]) == "1:12");
    CHECK(table.document.root.kind == Value::Kind::null);
}

TEST_CASE("Bytes that are no UTF-8 are refused where they are") {
    // RFC 3629: no overlong forms, no surrogates, nothing above U+10FFFF.
    for (const char* bad :
         {"\xff", "\x80", "\xC0\x80", "\xC1\xBF", "\xC3", "\xE0\x80\x80", "\xE0\x9F\xBF",
          "\xED\xA0\x80", "\xED\xBF\xBF", "\xF0\x80\x80\x80", "\xF0\x8F\xBF\xBF",
          "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xE2\x28\xA1", "\xE2\x82", "\xF0\x9F\x8F"}) {
        const Table table("id,note\n1," + std::string(bad));
        CAPTURE(listing(table.findings), table.document.source->text());
        REQUIRE(problem_ids(table.findings) == Ids{"not-utf8"});
        CHECK(place_of(table.findings.problems()[0]) == "2:3");
        CHECK(table.document.root.kind == Value::Kind::null);
    }
    // The first and last code point of each length.
    for (const char* good :
         {"\x7F", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEE\x80\x80",
          "\xEF\xBF\xBF", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"}) {
        const Table table("id,note\n1," + std::string(good) + "\n2,x");
        CAPTURE(listing(table.findings));
        REQUIRE(table.findings.none());
        CHECK(*table.cell(0, "note") == good);
        CHECK(table.rows() == 2);
    }
}
