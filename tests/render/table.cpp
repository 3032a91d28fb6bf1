// Tables and paragraphs of text, to the character.
#include <shown.hpp>

#include <quoin/render/table.hpp>

using namespace quoin;

namespace {

using Lines = std::vector<std::string>;

} // namespace

TEST_CASE("Words are wrapped at spaces, one that is too long stands alone") {
    struct Row {
        const char* text;
        std::size_t width;
        Lines lines;
    };
    for (const Row& row : std::vector<Row>{
             {"", 10, {""}},
             {"one", 10, {"one"}},
             {"one two", 7, {"one two"}},
             {"one two", 6, {"one", "two"}},
             {"one two three four", 9, {"one two", "three", "four"}},
             {"APR 6.740%, 30 years", 10, {"APR", "6.740%, 30", "years"}},
             {"a verylongword b", 5, {"a", "verylongword", "b"}},
             // A width is counted in characters on the screen, not in bytes.
             {"\xC3\xA9t\xC3\xA9 \xC3\xA0 \xC3\xA9t\xC3\xA9",
              5,
              {"\xC3\xA9t\xC3\xA9 \xC3\xA0", "\xC3\xA9t\xC3\xA9"}},
         }) {
        CAPTURE(row.text, row.width);
        CHECK(wrapped(row.text, row.width) == row.lines);
    }
    CHECK(display_width("\xC3\xA9t\xC3\xA9") == 3);
    CHECK(display_width("") == 0);
}

TEST_CASE("A paragraph has its first line behind one text, all others behind another") {
    CHECK(paragraph("one two three", "* ", "  ", 9) == "* one two\n  three\n");
    CHECK(paragraph("", "* ", "  ", 9) == "* \n");
}

TEST_CASE("Columns are as wide as their cells, numbers to the right, no blanks at line ends") {
    Table table({{"", Align::left}, {"price", Align::right}, {"note", Align::left}}, "> ");
    table.row({"deck", "$9,800.00", "wood"});
    table.row({"sink", "$540.00"}); // the rest is empty
    table.rule();
    table.row({"together", "$10,340.00", ""});
    table.gap();
    table.title("a line across all columns, however long it is");
    CHECK(table.text() == ">                price  note\n"
                          "> deck       $9,800.00  wood\n"
                          "> sink         $540.00\n"
                          ">           ----------  ----\n"
                          "> together  $10,340.00\n"
                          "\n"
                          "> a line across all columns, however long it is\n");
}

TEST_CASE("Headings are wrapped, and their last lines stand together") {
    Table table({{"", Align::left, 14, 6}, {"one two three", Align::right, 7}, {"x", Align::right}},
                "");
    table.row({"a", "1", "22"});
    CHECK(table.text() == "        one two\n"
                          "          three   x\n"
                          "a             1  22\n");
}

TEST_CASE("A table without headings begins with its rows, without anything it is empty") {
    Table table({{"", Align::left}, {"", Align::right}});
    CHECK(table.text().empty());
    table.row({"a", "1"});
    CHECK(table.text() == "  a  1\n");
}

TEST_CASE("Cells in letters of more than one byte stay aligned") {
    Table table({{"", Align::left}, {"", Align::right}}, "");
    table.row({"\xC3\xA9t\xC3\xA9", "1"});
    table.row({"hiver", "22"});
    CHECK(table.text() == "\xC3\xA9t\xC3\xA9     1\nhiver  22\n");
}
