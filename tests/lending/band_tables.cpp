// Band tables: edges as published, one row for every case, dates.
#include <shown.hpp>

#include <quoin/lending/editions.hpp>

#include <quoin/lending/band_table.hpp>
#include <quoin/lending/program.hpp>
#include <quoin/lending/reading.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/reader.hpp>
#include <quoin/words/problem_words.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

struct Read {
    BandTable table;
    Findings findings;
};

Read read(const std::string& text) {
    Read result;
    const Document document = json(text);
    Reader reader(document.root, Path{}, result.findings);
    result.table = read_band_table(reader);
    reader.finish();
    return result;
}

std::string table(const std::string& more) {
    return R"({"status": "sample", "source": "invented", "value": "percent", )" + more + "}";
}

Case ltv(const char* percent) {
    Case where;
    where.set(Dimension::ltv, decimal(percent));
    return where;
}

std::string only_problem(const Findings& findings) {
    REQUIRE(findings.problems().size() == 1);
    return std::string(name_of(findings.problems().front().id));
}

} // namespace

TEST_CASE("A band holds its published edges and nothing past them") {
    const Read read_table = read(table(R"("dimensions": ["ltv"], "rows": [
        {"ltv": "<= 80", "value": "1"}, {"ltv": "> 80, <= 85", "value": "2"},
        {"ltv": "> 85, < 90", "value": "3"}, {"ltv": ">= 90, <= 95", "value": "4"}])"));
    REQUIRE(read_table.findings.none());
    struct Row {
        const char* at;
        const char* value; ///< nullptr: no row
    };
    for (const Row& row :
         {Row{"0", "1"}, Row{"80", "1"}, Row{"80.000000001", "2"}, Row{"80.01", "2"},
          Row{"85", "2"}, Row{"85.000000001", "3"}, Row{"89.999999999", "3"}, Row{"90", "4"},
          Row{"95", "4"}, Row{"95.000000001", nullptr}}) {
        CAPTURE(row.at);
        const auto found = read_table.table.find(ltv(row.at));
        REQUIRE(found.has_value() == (row.value != nullptr));
        if (found) CHECK(*found == decimal(row.value));
    }
}

TEST_CASE("A dimension that is not known matches only rows open to any") {
    const Read read_table = read(table(R"("dimensions": ["score", "ltv"], "rows": [
        {"score": ">= 700", "ltv": "<= 80", "value": "1"}, {"ltv": "> 80", "value": "2"}])"));
    REQUIRE(read_table.findings.none());
    CHECK_FALSE(read_table.table.find(ltv("70")).has_value());
    CHECK(read_table.table.find(ltv("90")) == decimal("2"));
}

TEST_CASE("A grid is its rows, one for each band across") {
    const Read read_table = read(table(R"("dimensions": ["score", "ltv"],
        "across": {"dimension": "ltv", "bands": ["<= 80", "> 80"]},
        "rows": [{"score": ">= 700", "values": ["0", "0.5"]}, {"score": "< 700", "values": ["1",
      "2"]}])"));
    REQUIRE(read_table.findings.none());
    Case where = ltv("85");
    where.set(Dimension::score, decimal("650"));
    CHECK(read_table.table.find(where) == decimal("2"));
    CHECK(read_table.table.written.back() == "score < 700; ltv > 80");
    const Read short_row = read(table(R"("dimensions": ["ltv"],
        "across": {"dimension": "ltv", "bands": ["<= 80", "> 80"]}, "rows": [{"values": ["0"]}])"));
    CHECK(only_problem(short_row.findings) == "out-of-range");
}

TEST_CASE("Two rows for one case are refused, and so is a case without a row") {
    const Read overlap = read(table(R"("dimensions": ["ltv"], "rows": [
        {"ltv": "<= 80", "value": "1"}, {"ltv": ">= 80", "value": "2"}])"));
    CHECK(only_problem(overlap.findings) == "bands-overlap");
    const Read gap = read(table(R"("dimensions": ["ltv"], "covers": {"ltv": "> 0, <= 97"}, "rows": [
        {"ltv": "< 80", "value": "1"}, {"ltv": "> 80, <= 97", "value": "2"}])"));
    CHECK(only_problem(gap.findings) == "bands-gap");
    CHECK(words_of(gap.findings.problems().front(), catalogue_in(Language::english)).found ==
          "no row for ltv 80");
    const Read end = read(table(R"("dimensions": ["ltv"], "covers": {"ltv": "> 0, <= 97"}, "rows": [
        {"ltv": "<= 96.99", "value": "1"}])"));
    CHECK(only_problem(end.findings) == "bands-gap");
    const Read names = read(table(R"("dimensions": ["use"], "covers": {"use": "any"}, "rows": [
        {"use": "first", "value": "1"}, {"use": "exempt", "value": "0"}])"));
    CHECK(only_problem(names.findings) == "bands-gap");
}

TEST_CASE("What is no band is refused") {
    for (const char* text : {"", "80", "< 80 > 70", "> 90, < 80", "=> 80", "<= eighty", "<"}) {
        CAPTURE(text);
        const Read bad = read(table(R"("dimensions": ["ltv"], "rows": [{"ltv": ")" +
                                    std::string(text) + R"(", "value": "1"}])"));
        CHECK(only_problem(bad.findings) == "not-a-band");
    }
}

TEST_CASE("A table holds from its first day to the day before its end") {
    const Read read_table = read(table(
        R"("effective": "2026-01-01", "until": "2027-01-01", "dimensions": [],
      "rows": [{"value": "1"}])"));
    REQUIRE(read_table.findings.none());
    CHECK_FALSE(read_table.table.in_force(date("2025-12-31")));
    CHECK(read_table.table.in_force(date("2026-01-01")));
    CHECK(read_table.table.in_force(date("2026-12-31")));
    CHECK_FALSE(read_table.table.in_force(date("2027-01-01")));
}

TEST_CASE("Conforming limits by their years, FHFA") {
    const Lending& lending = six_programs().desk.lending;
    const LoanProgram& program =
        at(lending.programs, index_of(lending.programs, "conventional").value());
    Case baseline;
    baseline.set(Dimension::area, Decimal::whole(0));
    Case ceiling;
    ceiling.set(Dimension::area, Decimal::whole(1));
    const auto limits = [&](const char* day) {
        const auto editions = editions_of(program, {date(day), date(day)});
        return editions.rules[static_cast<std::size_t>(Rule::loan_limit)];
    };
    const auto limit = [&](const char* day, const Case& where) {
        return limits(day).rule()->find(where);
    };
    CHECK(limit("2025-06-01", baseline) == decimal("806500"));
    CHECK(limit("2025-12-31", baseline) == decimal("806500"));
    CHECK(limit("2026-01-01", baseline) == decimal("832750"));
    CHECK(limit("2026-01-01", ceiling) == decimal("1249125"));
    // Those of 2027 are not in the data: the last ones are used on, and that is told.
    CHECK(limit("2027-06-01", baseline) == decimal("832750"));
    CHECK(limits("2027-06-01").continues());
    CHECK_FALSE(limits("2026-12-31").continues());
    CHECK_FALSE(limits("2024-12-31").is_known());
}
