// Lots out of a spreadsheet: the same as in the price book itself, problems at the cell.
#include <shown.hpp>

#include "support/files.hpp"
#include "support/small_book.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

struct ReadLots {
    Document list;
    ReadBook read;
};

/// The small book with its lots in a list of this text.
ReadLots with_lots(std::string text) {
    Findings findings;
    ReadLots lots;
    lots.list = parse_csv(std::make_shared<Source>("lots.csv", std::move(text)), findings);
    lots.read = patched_book(
        R"([{"op": "replace", "path": "/lots", "value": {"csv": "lots.csv"}}])", &lots.list);
    findings.take(std::move(lots.read.findings));
    lots.read.findings = std::move(findings);
    return lots;
}

const std::string header =
    "id,premium,status,grade,plans,flood_zone,note,measure.rear_ft,measure.width_ft\n";

} // namespace

TEST_CASE("Both texts of a list are read in the language asked for") {
    const char* const rows =
        "id,premium,status,grade,plans,measure.rear_ft,note.en,note.es,office_note.en,"
        "office_note.es\n"
        "1,0,free,level,,20,Wide,Ancho,Ask first,Pregunte antes\n"
        "2,0,free,level,large,40,,,,\n"
        "3,0,sold,level,,,,,,\n";
    for (const auto& [language, note, office_note] :
         {std::tuple(Language::english, "Wide", "Ask first"),
          std::tuple(Language::spanish, "Ancho", "Pregunte antes")}) {
        Findings findings;
        Document list = parse_csv(std::make_shared<Source>("lots.csv", rows), findings);
        choose_lot_texts(list, language);
        const ReadBook read = patched_book(
            R"([{"op": "replace", "path": "/lots", "value": {"csv": "lots.csv"}}])", &list);
        INFO(listing(read.findings));
        REQUIRE(read.findings.none());
        CHECK(read.book.lots[0].note == note);
        CHECK(read.book.lots[0].office_note == office_note);
        CHECK(read.book.lots[1].office_note.empty());
    }
}

TEST_CASE("Rows of a list give the lots that the price book's own list gives") {
    const ReadLots lots =
        with_lots(header + "1,$0,free,level,,false,,20,\n"
                           "2,\"$8,000\",held,walk-out,large,true,a note,40,70.5\n"
                           "3,-500,sold,garden, small  large ,,,,\n");
    INFO(listing(lots.read.findings));
    REQUIRE(lots.read.findings.none());
    const std::vector<Lot>& read = lots.read.book.lots;
    REQUIRE(read.size() == 3);
    for (std::size_t i = 0; i < 3; ++i) {
        const Lot& own = small_book().lots[i];
        CAPTURE(own.id);
        CHECK(read[i].id == own.id);
        CHECK(read[i].premium == own.premium);
        CHECK(read[i].status == own.status);
        CHECK(read[i].grade == own.grade);
        CHECK(read[i].flood_zone == own.flood_zone);
        CHECK(read[i].note == own.note);
    }
    CHECK(read[0].plans.empty());
    CHECK(read[1].plans == std::vector{Index<Plan>(1)});
    CHECK(read[2].plans ==
          std::vector{Index<Plan>(0), Index<Plan>(1)}); // as many blanks as it likes
    CHECK(read[0].measures.size() == 1);                // an empty cell is no measure
    CHECK(*find_measure(read[1].measures, "width_ft") == decimal("70.5"));
}

TEST_CASE("What is wrong in a row is shown at its cell, in the list's own file") {
    struct Row {
        const char* row;
        const char* id;
        const char* place;
    };
    for (const Row& row : {
             Row{"4,free,free,level,,,,,", "not-money", "4:3"},
             Row{"4,0,open,level,,,,,", "not-one-of", "4:5"},
             Row{"4,0,free,flat,,,,,", "not-one-of", "4:10"},
             Row{"4,0,free,level,huge,,,,", "name-unknown", "4:16"},
             Row{"4,0,free,level,,no,,,", "wrong-kind", "4:17"},
             Row{"4,0,free,level,,,,wide,", "not-a-decimal", "4:19"},
             Row{"Lot 4,0,free,level,,,,,", "not-an-id", "4:1"},
             Row{"1,0,free,level,,,,,", "id-repeated", "4:1"},
             Row{"4,,free,level,,,,,", "member-missing", "4:1"},
             Row{",0,free,level,,,,,", "member-missing", "4:1"},
             Row{"4,0,free,level,,,,", "csv-cells", "4:1"},
         }) {
        CAPTURE(row.row);
        const ReadLots lots =
            with_lots(header + "1,0,free,level,,,,,\n2,0,free,level,,,,,\n" + row.row + "\n");
        INFO(listing(lots.read.findings));
        const Ids ids = problem_ids(lots.read.findings);
        REQUIRE(ids.size() == 1);
        CHECK(ids[0] == row.id);
        CHECK(place_of(lots.read.findings.problems()[0]) == row.place);
        CHECK(lots.read.findings.problems()[0].file == "lots.csv");
    }
}

TEST_CASE("A column nobody knows is reported, every row that fills it") {
    const ReadLots lots =
        with_lots("id,premium,status,grade,colour\n1,0,free,level,red\n2,0,free,level,\n");
    REQUIRE_FALSE(lots.read.findings.none());
    CHECK(name_of(lots.read.findings.problems()[0].id) == "member-unknown");
    CHECK(place_of(lots.read.findings.problems()[0]) == "1:25");
}

TEST_CASE("Where the list stands, and a list that could not be read") {
    const Parsed book(R"({"lots": {"csv": "a/lots.csv"}})");
    CHECK(lots_file(book.root()) == "a/lots.csv");
    CHECK(lots_file(Parsed(R"({"lots": []})").root()) == std::nullopt);
    CHECK(lots_file(Parsed(R"({})").root()) == std::nullopt);
    CHECK(lots_file(Parsed(R"({"lots": {"csv": 5}})").root()) == std::nullopt);
    // Without the list, names of lots are not missed one by one: the file itself is.
    const std::string pointed = R"([{"op": "replace", "path": "/lots", "value": {"csv": "x.csv"}},
        {"op": "add", "path": "/version", "value": 7}])";
    CHECK(problem_ids(patched_book(pointed).findings) == Ids{"wrong-kind"});
    const ReadLots broken = with_lots(header + "1,\"0,free,level,,,,,\n");
    CHECK(problem_ids(broken.read.findings).front() == "csv-quote");
    for (const char* bad : {R"({"file": "lots.csv"})", R"({"csv": 5})", R"({"csv": ""})"}) {
        CAPTURE(bad);
        const ReadBook read = patched_book(R"([{"op": "replace", "path": "/lots", "value": )" +
                                           std::string(bad) + "}]");
        CHECK_FALSE(read.findings.none());
    }
}
