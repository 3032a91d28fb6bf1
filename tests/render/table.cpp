// Tables and paragraphs of text, to the character.
#include <shown.hpp>

#include <quoin/render/blocks.hpp>

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
             {"a rear deck *", 11, {"a rear", "deck *"}}, // a mark stays with its word
             {"2 * 3", 3, {"2 *", "3"}},
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
    CHECK(paragraph("one two three", "* ", "  ").text(9) == "* one two\n  three\n");
    CHECK(paragraph("", "* ", "  ").text(9) == "* \n");
    // On a line of the usual width or more two columns stay free.
    const std::string words = paragraph(std::string(49, 'a') + " " + std::string(49, 'b')).text();
    CHECK(words == std::string(49, 'a') + "\n" + std::string(49, 'b') + "\n");
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

namespace {

Table wishes() {
    Table table({{"", Align::left, 14, 20}, {"price", Align::right}, {"a month", Align::right}});
    table.title("Kitchen");
    table.row({"  Counters of quartz with veins", "+$4,582.00", "+$35.80 a"});
    table.remark("also adds the cabinets", 84);
    table.rule();
    table.row({"all together", "+$14,582.00", "+$135.80"});
    return table;
}

std::size_t widest(const std::string& text) {
    std::size_t width = 0;
    std::size_t from = 0;
    while (from < text.size()) {
        const std::size_t end = text.find('\n', from);
        width = std::max(width, display_width(text.substr(from, end - from)));
        from = end + 1;
    }
    return width;
}

} // namespace

TEST_CASE("Where a line is short, names are wrapped before anything else gives") {
    CHECK(wishes().text(48) == "                                price    a month\n"
                               "  Kitchen\n"
                               "    Counters of quartz     +$4,582.00  +$35.80 a\n"
                               "      with veins\n"
                               "        also adds the cabinets\n"
                               "                          -----------  ---------\n"
                               "  all together            +$14,582.00   +$135.80\n");
}

TEST_CASE("Where even that is too wide, each figure stands under its name with what it is") {
    CHECK(wishes().text(38) == "  Kitchen\n"
                               "    Counters of quartz with veins\n"
                               "        price     +$4,582.00\n"
                               "        a month    +$35.80 a\n"
                               "        also adds the cabinets\n"
                               "                 -----------\n"
                               "  all together\n"
                               "      price      +$14,582.00\n"
                               "      a month       +$135.80\n");
}

TEST_CASE("Columns that are compared stand in groups where they do not fit side by side") {
    Table table({{"", Align::left, 14, 12}, {"one", Align::right}, {"two", Align::right}});
    table.row({"principal and interest", "$2,845.12", "$2,900.00"});
    table.rule();
    table.row({"month", "$12,845.12", "$12,900.00"});
    table.beside();
    CHECK(table.text(34) == "                               one\n"
                            "  principal and          $2,845.12\n"
                            "    interest\n"
                            "                        ----------\n"
                            "  month                 $12,845.12\n"
                            "\n"
                            "                               two\n"
                            "  principal and          $2,900.00\n"
                            "    interest\n"
                            "                        ----------\n"
                            "  month                 $12,900.00\n");
}

TEST_CASE("No line of blocks is wider than asked for, and no word is lost") {
    Blocks all = titled("A title of some length that no narrow line has room for");
    all += paragraph("one two /a/path/of/files/that/is/longer/than/a/line/of/forty/columns.json",
                     "  a  ", "     ");
    all += wishes();
    all += "  a line as it is, which goes on below itself, two further in, where it is too long\n";
    all += OneLine{{"$497,660.00", "$3,412.18 a month", "estimate, November 24, 2026"}};
    const auto letters = [](std::string text) {
        std::erase_if(text, [](char c) { return c == ' ' || c == '\n' || c == '-'; });
        return text;
    };
    const std::string wide = all.text();
    for (const std::size_t width : {std::size_t{40}, std::size_t{60}, std::size_t{160}}) {
        CAPTURE(width);
        CHECK(widest(all.text(width)) <= width);
    }
    CHECK(letters(all.text(60)) == letters(wide));
    CHECK(wide.find("$497,660.00 \xC2\xB7 $3,412.18 a month \xC2\xB7 estimate") !=
          std::string::npos);
    CHECK(Blocks(OneLine{{"one two", "three four"}}).text(12) ==
          "one two \xC2\xB7\n  three four\n");
}

TEST_CASE("A line that comes in pieces is one line") {
    Blocks out = "  one ";
    out += std::string("two\n");
    out += Blocks();
    CHECK(out.text() == "  one two\n");
    CHECK(Blocks("").empty());
}
