// Tables read whole: grids, dimensions left out, what overlaps and gaps say, one mistake at a time.
#include <shown.hpp>

#include <random>

#include <quoin/lending/band_table.hpp>
#include <quoin/lending/reading.hpp>
#include <quoin/text/reader.hpp>

#include "lending/band.hpp"
#include "support/files.hpp"
#include "support/findings.hpp"
#include "support/patched.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

struct Read {
    Findings findings;
    Document document;
    BandTable table;

    explicit Read(const std::string& text)
        : document(parse_json(std::make_shared<Source>("t.json", text), findings)) {
        Reader reader(document.root, Path{}, findings);
        table = read_band_table(reader);
        reader.finish();
    }
};

/// A table of percents in these dimensions, with these rows and whatever else.
Read rows(const std::string& dimensions, const std::string& rows, const std::string& more = "") {
    return Read(
        R"({"status": "sample", "source": "invented", "value": "percent", "dimensions": [)" +
        dimensions + R"(], "rows": [)" + rows + "]" + more + "}");
}

struct Said {
    Ids ids;
    std::vector<std::string> found;
    std::vector<std::string> advice;
};

Said said(const Read& read) {
    Said said{problem_ids(read.findings), {}, {}};
    for (const Problem& problem : read.findings.problems()) {
        said.found.push_back(words_of(problem, catalogue_in(Language::english)).found);
        said.advice.push_back(words_of(problem, catalogue_in(Language::english)).advice);
    }
    return said;
}

using Texts = std::vector<std::string>;

const char* const good_table = R"({"name": "T", "status": "published", "source": "a source",
    "value": "percent", "effective": "2026-01-01", "until": "2027-01-01", "dated_by": "closing",
    "dimensions": ["term", "ltv"], "covers": {"term": "> 0", "ltv": "> 0, <= 97"},
    "rows": [{"term": "<= 180", "value": "1"}, {"term": "> 180", "ltv": "<= 80", "value": "2"},
             {"term": "> 180", "ltv": "> 80", "value": "3"}]})";

Read mistaken(const std::string& operation) {
    return Read(patched(good_table, "[" + operation + "]"));
}

} // namespace

TEST_CASE("Everything a table says of itself is kept") {
    const Read read{good_table};
    INFO(listing(read.findings));
    REQUIRE(read.findings.none());
    CHECK(read.table.name == "T");
    CHECK(read.table.source == "a source");
    CHECK(read.table.status == Status::published);
    CHECK(read.table.unit == "percent");
    CHECK(read.table.effective == date("2026-01-01"));
    CHECK(read.table.until == date("2027-01-01"));
    CHECK(read.table.by_closing);
    CHECK(read.table.dimensions == std::vector{Dimension::term, Dimension::ltv});
    CHECK(read.table.written ==
          Texts{"term <= 180", "term > 180; ltv <= 80", "term > 180; ltv > 80"});
    Case where;
    where.set(Dimension::term, decimal("180"));
    CHECK(read.table.row(where) == 0); // ltv is not asked of short loans
    where.set(Dimension::term, decimal("181"));
    CHECK_FALSE(read.table.row(where).has_value());
    where.set(Dimension::ltv, decimal("80"));
    CHECK(read.table.row(where) == 1);
    where.set(Dimension::ltv, decimal("80.01"));
    CHECK(read.table.find(where) == decimal("3"));
}

TEST_CASE("One mistake in a table is one problem, at its place") {
    struct Row {
        std::string operation;
        const char* id;
        const char* path;
    };
    for (const Row& row : {
             Row{op_remove("/source"), "member-missing", ""},
             Row{op_remove("/status"), "member-missing", ""},
             Row{op_remove("/value"), "member-missing", ""},
             Row{op_remove("/rows"), "member-missing", ""},
             Row{op_replace("/source", "\"\""), "text-empty", "/source"},
             Row{op_replace("/status", "\"verified\""), "not-one-of", "/status"},
             Row{op_replace("/value", "\"dollars\""), "not-one-of", "/value"},
             Row{op_replace("/dated_by", "\"contract\""), "not-one-of", "/dated_by"},
             Row{op_replace("/effective", "\"2026\""), "not-a-date", "/effective"},
             Row{op_replace("/until", "\"2026-01-01\""), "dates-reversed", "/until"},
             Row{op_replace("/rows/0/term", "\"180\""), "not-a-band", "/rows/0/term"},
             Row{op_replace("/rows/1/ltv", "80"), "wrong-kind", "/rows/1/ltv"},
             Row{op_replace("/rows/1/ltv", "\"<= 80%\""), "not-a-band", "/rows/1/ltv"},
             Row{op_replace("/rows/2/value", "\"three\""), "not-a-decimal", "/rows/2/value"},
             Row{op_replace("/rows/2/value", "\"term\""), "not-a-decimal", "/rows/2/value"},
             Row{op_remove("/rows/2/value"), "member-missing", "/rows/2"},
             Row{op_add("/rows/0/score", "\">= 620\""), "member-unknown", "/rows/0/score"},
             Row{op_add("/covers/score", "\">= 620\""), "member-unknown", "/covers/score"},
             Row{op_replace("/covers/ltv", "\"97\""), "not-a-band", "/covers/ltv"},
             Row{op_add("/until_when", "1"), "member-unknown", "/until_when"},
             Row{op_replace("/rows/1/ltv", "\"<= 81\""), "bands-overlap", "/rows/2"},
             Row{op_replace("/rows/1/ltv", "\"< 80\""), "bands-gap", "/rows"},
         }) {
        const Read read = mistaken(row.operation);
        INFO(row.operation << "\n" << listing(read.findings));
        REQUIRE(problem_ids(read.findings) == Ids{row.id});
        CHECK(read.findings.problems()[0].path == row.path);
    }
    CHECK(problem_ids(mistaken(op_add("/dimensions/-", "\"rate\"")).findings) == Ids{"not-one-of"});
}

TEST_CASE("Two rows for one case: the later one is shown, with the number of the earlier") {
    const Said edge = said(rows(R"("ltv")", R"({"ltv": "<= 80", "value": "1"},
        {"ltv": "> 80, <= 90", "value": "2"}, {"ltv": ">= 90", "value": "3"})"));
    CHECK(edge.ids == Ids{"bands-overlap"});
    CHECK(edge.found == Texts{"two rows for ltv >= 90"});
    CHECK(edge.advice == Texts{"row 2 has it too; change one of them"});
    // Overlap needs every dimension: these touch in one only.
    CHECK(rows(R"("term", "ltv")", R"({"term": "<= 180", "ltv": "<= 80", "value": "1"},
        {"term": "> 180", "ltv": "<= 80", "value": "2"}, {"ltv": "> 80", "value": "3"})")
              .findings.none());
    const Said both = said(rows(R"("term", "ltv")", R"({"term": "<= 180", "ltv": "<= 80",
        "value": "1"}, {"term": ">= 180", "ltv": ">= 80", "value": "2"}, {"value": "3"})"));
    CHECK(both.ids == Ids{"bands-overlap", "bands-overlap"}); // each later row once
    CHECK(both.found == Texts{"two rows for term >= 180; ltv >= 80", "two rows for any"});
    CHECK(both.advice ==
          Texts{"row 1 has it too; change one of them", "row 1 has it too; change one of them"});
    const Said named = said(rows(R"("use")", R"({"use": "first", "value": "1"},
        {"use": "any", "value": "2"})"));
    CHECK(named.ids == Ids{"bands-overlap"});
    // In a grid the row is named, not the cell.
    const Said grid = said(rows(R"("score", "ltv")",
                                R"({"score": ">= 700", "values": ["1", "2", "3"]},
                                   {"score": ">= 650", "values": ["4", "5", "6"]})",
                                R"(, "across": {"dimension": "ltv",
                                   "bands": ["<= 80", "> 80, <= 90", "> 90"]})"));
    CHECK(grid.ids == Ids{"bands-overlap", "bands-overlap", "bands-overlap"});
    CHECK(grid.found.at(1) == "two rows for score >= 650; ltv > 80, <= 90");
    CHECK(grid.advice == Texts{"row 1 has it too; change one of them",
                               "row 1 has it too; change one of them",
                               "row 1 has it too; change one of them"});
}

TEST_CASE("A case without a row is named: the first value that has none") {
    struct Row {
        std::string dimensions;
        std::string table;
        std::string covers;
        const char* found;
    };
    for (const Row& row : {
             Row{R"("ltv")", R"({"ltv": "<= 80", "value": "1"}, {"ltv": "> 85", "value": "2"})",
                 R"("ltv": "> 0, <= 97")", "no row for ltv 80.000000001"},
             Row{R"("ltv")", R"({"ltv": "< 80", "value": "1"}, {"ltv": "> 80", "value": "2"})",
                 R"("ltv": "> 0, <= 97")", "no row for ltv 80"},
             Row{R"("ltv")", R"({"ltv": ">= 60", "value": "1"})", R"("ltv": ">= 50, <= 97")",
                 "no row for ltv 50"},
             Row{R"("ltv")", R"({"ltv": "<= 95", "value": "1"})", R"("ltv": "> 0, <= 95.01")",
                 "no row for ltv 95.000000001"},
             Row{R"("score", "ltv")",
                 R"({"score": ">= 700", "value": "1"},
                    {"score": "< 700", "ltv": "<= 90", "value": "2"})",
                 R"("score": ">= 620", "ltv": "> 0, <= 97")",
                 "no row for score 620, ltv 90.000000001"},
             Row{R"("use")", R"({"use": "first", "value": "1"}, {"use": "exempt", "value": "0"})",
                 R"("use": "any")", "no row for use subsequent"},
             Row{R"("use", "ltv")",
                 R"({"use": "first", "value": "1"}, {"use": "subsequent", "value": "2"},
                    {"use": "exempt", "ltv": "<= 80", "value": "3"})",
                 R"("use": "any", "ltv": "> 0, <= 85")", "no row for use exempt, ltv 80.000000001"},
         }) {
        const Read read = rows(row.dimensions, row.table, R"(, "covers": {)" + row.covers + "}");
        INFO(row.table << "\n" << listing(read.findings));
        REQUIRE(problem_ids(read.findings) == Ids{"bands-gap"});
        CHECK(words_of(read.findings.problems()[0], catalogue_in(Language::english)).found ==
              row.found);
    }
    // Outside of what is covered, a table may have no rows.
    CHECK(rows(R"("ltv")", R"({"ltv": "> 80, <= 97", "value": "1"})",
               R"(, "covers": {"ltv": "> 80, <= 97"})")
              .findings.none());
    CHECK(rows(R"("use")", R"({"use": "first", "value": "1"})", R"(, "covers": {"use": "first"})")
              .findings.none());
}

TEST_CASE("Gaps and overlaps agree with trying every case") {
    // Random tables over whole numbers, where trying all of them is possible.
    std::mt19937 random(11);
    const auto below = [&](std::size_t end) { return static_cast<int>(random() % end); };
    int overlapping = 0;
    int gapped = 0;
    int sound = 0;
    for (int i = 0; i < 1000; ++i) {
        std::string text;
        for (int row = 0; row < 3; ++row) {
            const int low = row == 0 ? 0 : below(9);
            const int high = low + below(9);
            text += (row == 0 ? "" : ",") + (R"({"ltv": ">= )" + std::to_string(low) + ", <= " +
                                             std::to_string(high) + R"(", "value": "1"})");
        }
        const Read read = rows(R"("ltv")", text); // without "covers": only overlaps are looked for
        std::vector<int> hits(20);
        bool twice = false;
        for (int value = 0; value < 20; ++value) {
            Case where;
            where.set(Dimension::ltv, Decimal::whole(value));
            for (std::size_t row = 0; row < 3; ++row) {
                hits[static_cast<std::size_t>(value)] +=
                    read.table.bands[row].holds(where.at(static_cast<std::size_t>(Dimension::ltv)));
            }
            twice = twice || hits[static_cast<std::size_t>(value)] > 1;
        }
        INFO(text);
        REQUIRE(read.findings.none() == !twice);
        if (twice) {
            ++overlapping;
            continue;
        }
        const int asked = below(20);
        const Read covered =
            rows(R"("ltv")", text, R"(, "covers": {"ltv": "= )" + std::to_string(asked) + "\"}");
        const bool has_row = hits[static_cast<std::size_t>(asked)] == 1;
        REQUIRE(covered.findings.none() == has_row);
        ++(has_row ? sound : gapped);
    }
    CHECK(overlapping > 20);
    CHECK(gapped > 20);
    CHECK(sound > 20);
}

TEST_CASE("A grid: wrong number of values, a dimension it does not have, a bad band across") {
    const auto grid = [](const std::string& across, const std::string& values) {
        return rows(R"("score", "ltv")", R"({"score": ">= 620", "values": )" + values + "}",
                    R"(, "across": )" + across);
    };
    const std::string two = R"({"dimension": "ltv", "bands": ["<= 80", "> 80"]})";
    CHECK(grid(two, R"(["1", "2"])").findings.none());
    for (const char* values : {R"(["1"])", R"(["1", "2", "3"])", "[]"}) {
        const Read read = grid(two, values);
        CAPTURE(values, listing(read.findings));
        REQUIRE(problem_ids(read.findings) == Ids{"out-of-range"});
        CHECK(words_of(read.findings.problems()[0], catalogue_in(Language::english)).expected ==
              "2 values, one for each band");
        CHECK(read.findings.problems()[0].path == "/rows/0/values");
    }
    CHECK(problem_ids(grid(two, R"(["1", "x"])").findings) == Ids{"not-a-decimal"});
    CHECK(problem_ids(grid(R"({"dimension": "ltv", "bands": ["<= 80", "80+"]})", R"(["1", "2"])")
                          .findings) == Ids{"not-a-band"});
    const Read other =
        grid(R"({"dimension": "down", "bands": ["<= 80", "> 80"]})", R"(["1", "2"])");
    CHECK(problem_ids(other.findings).front() == "out-of-range");
    CHECK(other.findings.problems()[0].path == "/across/dimension");
}

TEST_CASE("Months may be the whole term, other values may not") {
    const Read months(R"({"status": "sample", "source": "invented", "value": "months",
        "dimensions": ["ltv"], "rows": [{"ltv": "<= 90", "value": "132"},
                                        {"ltv": "> 90", "value": "term"}]})");
    REQUIRE(months.findings.none());
    CHECK(months.table.value(0) == decimal("132"));
    CHECK(months.table.value(1) == whole_term);
}

TEST_CASE("Money is looked up to the cent") {
    const Read read = rows(R"("base_loan")", R"({"base_loan": "<= 726200", "value": "1"},
        {"base_loan": "> 726200", "value": "2"})");
    Case where;
    where.set(Dimension::base_loan, money("726200.00"));
    CHECK(read.table.find(where) == decimal("1"));
    where.set(Dimension::base_loan, money("726200.01"));
    CHECK(read.table.find(where) == decimal("2"));
}
