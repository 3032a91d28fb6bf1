// Programs, rate sheets and places: read whole, one mistake at a time, and the shipped ones clean.
#include <shown.hpp>

#include <quoin/lending/editions.hpp>
#include <quoin/text/language.hpp>

#include <filesystem>
#include <fstream>
#include <sstream>

#include <quoin/inquiry/desk.hpp>
#include <quoin/lending/reading.hpp>
#include <quoin/loan/fee_methods.hpp>

#include "support/files.hpp"
#include "support/findings.hpp"
#include "support/patched.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const char* const program_text = R"({
  "format": "quoin/program/1", "id": "any-loan", "name": "Any loan", "kind": "usda",
  "summary": "a summary", "catch": "the catch", "terms_months": [360, "180"],
  "loan_rounding": "cent",
  "upfront": {"name": "Fee", "method": "share of total loan"},
  "annual": {"name": "Yearly fee", "method": "usda average balance"},
  "rules": {
    "maximum_ltv": [
      {"until": "2026-01-01", "status": "sample", "source": "invented", "value": "percent",
       "dimensions": [], "rows": [{"value": "95"}]},
      {"effective": "2026-01-01", "status": "sample", "source": "invented", "value": "percent",
       "dimensions": [], "rows": [{"value": "100"}]}],
    "upfront_fee": [
      {"effective": "2026-06-01", "dated_by": "closing", "status": "sample", "source": "invented",
       "value": "percent", "dimensions": [], "rows": [{"value": "1"}]}]
  }
})";

const char* const sheet_text = R"({
  "format": "quoin/rates/1", "id": "day", "date": "2026-11-20", "good_through": "2026-12-04",
  "status": "quoted", "lender": {"name": "A lender", "license": "none"}, "note": "a note",
  "per_diem_year": "365",
  "ladders": [
    {"program": "any-loan", "months": 360, "lock_days": 60,
     "rungs": [{"rate": "6.000", "points": "1"}, {"rate": "6.250", "points": "-0.5"}]},
    {"program": "any-loan", "months": 360, "lock_days": 30,
     "rungs": [{"rate": "5.875", "points": "1"}]},
    {"program": "any-loan", "months": 180, "lock_days": 90,
     "rungs": [{"rate": "5.000", "points": "0"}]}],
  "adjustments": [
    {"name": "Score", "programs": ["any-loan"], "status": "sample", "source": "invented",
     "value": "points", "dimensions": ["score"], "rows": [{"score": "< 700", "value": "0.5"}]}],
  "mortgage_insurance": [
    {"status": "sample", "source": "invented", "value": "percent", "dimensions": ["ltv"],
     "rows": [{"ltv": "> 80", "value": "0.6"}]}],
  "costs": [{"name": "Underwriting", "section": "origination", "amount": "900",
             "finance_charge": true}]
})";

const char* const place_text = R"({
  "format": "quoin/place/1", "id": "here", "name": "Here", "status": "published", "source": "x",
  "loan_limit_area": "ceiling", "rural_eligible": true,
  "property_tax": {
    "assessed_percent": "80", "levies": [{"name": "County", "mills": "6.25"}],
    "exemptions": [{"name": "Owner", "amount": "5000", "from_year": 2},
                   {"name": "Share", "percent": "10"}],
    "due": [{"on": "05-31", "percent": "60"}, {"on": "11-30", "percent": "40"}],
    "land_only": {"land_percent": "20", "months": 6}},
  "districts": [{"name": "Drains", "mills": "0.5"}, {"name": "Lights", "yearly": "120"}],
  "insurance": {"dwelling_percent": "75",
    "homeowner": {"status": "sample", "source": "invented", "value": "per thousand",
                  "dimensions": ["dwelling_value"], "rows": [{"value": "4"}]},
    "flood": {"yearly": "700"}, "wind": {"yearly": "90"}},
  "escrow": {"cushion_months": 1, "prepaid_insurance_months": 14},
  "dues": [{"name": "Association", "monthly": "46.50"}],
  "closing_costs": [
    {"name": "Survey", "section": "services shopped for", "amount": "450", "paid_by": "seller"},
    {"name": "Stamp", "section": "taxes and government fees", "percent_of_loan": "0.18"},
    {"name": "Deed", "section": "taxes and government fees", "per_thousand_of_price": "1.5"},
    {"name": "Owner's policy", "section": "other", "of": "price", "title_policy": "owner",
     "tiers": [{"up_to": "100000", "per_thousand": "4"}, {"per_thousand": "3"}]},
    {"name": "Lender's policy", "section": "services shopped for", "per_thousand_of_loan": "2",
     "title_policy": "lender", "simultaneous": "150", "paid": "before closing"}]
})";

template <class Item>
struct Read {
    Findings findings;
    Document document;
    Item item;

    Read(Item (*reader)(const Document&, Findings&), const std::string& text)
        : document(parse_json(std::make_shared<Source>("t.json", text), findings)),
          item(reader(document, findings)) {}
};

struct Row {
    std::string operation;
    const char* id;
    const char* path;
};

template <class Item>
void check_rows(Item (*reader)(const Document&, Findings&), const char* text,
                const std::vector<Row>& rows) {
    REQUIRE(Read(reader, text).findings.none());
    for (const Row& row : rows) {
        const Read<Item> read(reader, patched(text, "[" + row.operation + "]"));
        INFO(row.operation << "\n" << listing(read.findings));
        REQUIRE(problem_ids(read.findings) == Ids{row.id});
        CHECK(read.findings.problems()[0].path == row.path);
    }
}

LoanProgram read_with_methods(const Document& document, Findings& findings) {
    return read_program(document, fee_methods(), findings);
}

Row bad(const char* path, const char* value, const char* id) {
    return {op_replace(path, value), id, path};
}
Row missing(const char* path, const char* object) {
    return {op_remove(path), "member-missing", object};
}

} // namespace

TEST_CASE("A program: its words, terms, methods and dated rules") {
    const Read read(read_with_methods, program_text);
    INFO(listing(read.findings));
    REQUIRE(read.findings.none());
    const LoanProgram& program = read.item;
    CHECK(program.id == "any-loan");
    CHECK(program.kind == ProgramKind::usda);
    CHECK(program.summary == "a summary");
    CHECK(program.fine_print == "the catch");
    CHECK(program.terms_months == std::vector{360, 180});
    CHECK_FALSE(program.whole_dollars);
    CHECK(program.upfront->name == "share of total loan");
    CHECK(program.upfront_name == "Fee");
    CHECK(program.annual->name == "usda average balance");
    // One table for each day; a rule dated by the closing looks at the closing only.
    const Date early = date("2025-12-31");
    const Date late = date("2026-01-01");
    const auto rule = [&](Rule which, Date as_of, Date closing) {
        return editions_of(program, {as_of, closing}).rules[static_cast<std::size_t>(which)];
    };
    using State = Edition<BandTable>::State;
    CHECK(rule(Rule::maximum_ltv, early, late).rule()->value(0) == decimal("95"));
    CHECK(rule(Rule::maximum_ltv, late, early).rule()->value(0) == decimal("100"));
    const auto fee = rule(Rule::upfront_fee, date("2026-06-01"), date("2026-05-31"));
    CHECK(fee.state() == State::not_yet);
    CHECK(rule(Rule::upfront_fee, early, date("2026-06-01")).state() == State::in_force);
    CHECK(rule(Rule::loan_limit, late, late).state() == State::none);
    for (std::size_t i = 0; i < rule_count; ++i) {
        CHECK_FALSE(name_of(static_cast<Rule>(i)).empty());
    }
}

TEST_CASE("One mistake in a program is one problem") {
    check_rows(
        read_with_methods, program_text,
        {
            missing("/format", ""),
            missing("/id", ""),
            missing("/name", ""),
            missing("/kind", ""),
            missing("/rules", ""),
            missing("/upfront/name", "/upfront"),
            missing("/annual/method", "/annual"),
            bad("/format", "\"quoin/program/2\"", "format-unknown"),
            bad("/id", "\"FHA\"", "not-an-id"),
            bad("/kind", "\"jumbo\"", "not-one-of"),
            bad("/upfront/method", "\"percent\"", "not-one-of"),
            bad("/annual/method", "\"percent\"", "not-one-of"),
            bad("/loan_rounding", "\"nearest\"", "not-one-of"),
            bad("/terms_months/0", "0", "not-a-whole-number"),
            bad("/terms_months/0", "481", "not-a-whole-number"),
            bad("/terms_months/0", "12.5", "not-a-whole-number"),
            bad("/terms_months/0", "\"long\"", "not-a-decimal"),
            bad("/terms_months", "360", "wrong-kind"),
            bad("/rules/maximum_ltv/0/rows/0/value", "\"x\"", "not-a-decimal"),
            {op_add("/rules/max_ltv", "[]"), "member-unknown", "/rules/max_ltv"},
            {op_add("/fees", "1"), "member-unknown", "/fees"},
            // Two tables of one rule on one day, whichever ends are open.
            {op_replace("/rules/maximum_ltv/1/effective", "\"2025-12-31\""), "dates-overlap",
             "/rules/maximum_ltv/1"},
            {op_remove("/rules/maximum_ltv/0/until"), "dates-overlap", "/rules/maximum_ltv/1"},
            {op_remove("/rules/maximum_ltv/1/effective"), "dates-overlap", "/rules/maximum_ltv/1"},
        });
}

TEST_CASE("A rate sheet: lender, ladders, adjustments, factors and the lender's costs") {
    const Read read(read_rate_sheet, sheet_text);
    INFO(listing(read.findings));
    REQUIRE(read.findings.none());
    const RateSheet& sheet = read.item;
    CHECK(sheet.id == "day");
    CHECK(sheet.date == date("2026-11-20"));
    CHECK(sheet.good_through == date("2026-12-04"));
    CHECK_FALSE(sheet.sample);
    CHECK(sheet.lender == "A lender");
    CHECK(sheet.license == "none");
    CHECK(sheet.per_diem_year == 365);
    REQUIRE(sheet.ladders.size() == 3);
    CHECK(sheet.ladders[0].rungs.at(1).rate == rate("6.25"));
    CHECK(sheet.ladders[0].rungs.at(1).points == Points(decimal("-0.5")));
    CHECK(sheet.adjustments.at(0).programs == std::vector<std::string>{"any-loan"});
    CHECK(sheet.adjustments.at(0).table.name == "Score");
    CHECK(sheet.mortgage_insurance.size() == 1);
    CHECK(sheet.costs.at(0).finance_charge);
}

TEST_CASE("The ladder of a lock is the shortest that lasts long enough") {
    const Read read(read_rate_sheet, sheet_text);
    struct Row {
        const char* program;
        int months;
        int days;
        int lock; ///< of the ladder; 0: none
    };
    for (const Row& row : {
             Row{"any-loan", 360, 1, 30},
             Row{"any-loan", 360, 30, 30},
             Row{"any-loan", 360, 31, 60},
             Row{"any-loan", 360, 60, 60},
             Row{"any-loan", 360, 61, 0},
             Row{"any-loan", 180, 60, 90},
             Row{"any-loan", 240, 30, 0},
             Row{"other", 360, 30, 0},
         }) {
        CAPTURE(row.program, row.months, row.days);
        const Ladder* ladder = read.item.ladder(row.program, row.months, row.days);
        REQUIRE((ladder != nullptr) == (row.lock != 0));
        if (ladder != nullptr) CHECK(ladder->lock_days == row.lock);
    }
}

TEST_CASE("One mistake in a rate sheet is one problem") {
    check_rows(
        read_rate_sheet, sheet_text,
        {
            missing("/format", ""),
            missing("/id", ""),
            missing("/date", ""),
            missing("/good_through", ""),
            missing("/status", ""),
            missing("/lender", ""),
            missing("/lender/license", "/lender"),
            missing("/ladders", ""),
            missing("/ladders/0/months", "/ladders/0"),
            missing("/ladders/0/lock_days", "/ladders/0"),
            missing("/ladders/0/rungs", "/ladders/0"),
            missing("/ladders/1/rungs/0/points", "/ladders/1/rungs/0"),
            bad("/format", "\"quoin/rates/0\"", "format-unknown"),
            bad("/good_through", "\"2026-11-19\"", "dates-reversed"),
            bad("/status", "\"published\"", "not-one-of"),
            bad("/per_diem_year", "\"364\"", "not-one-of"),
            bad("/ladders/0/months", "481", "not-a-whole-number"),
            bad("/ladders/0/lock_days", "0", "not-a-whole-number"),
            bad("/ladders/1/rungs/0/rate", "\"101\"", "not-a-rate"),
            bad("/ladders/1/rungs/0/rate", "\"-1\"", "not-a-rate"),
            bad("/ladders/1/rungs/0/points", "\"none\"", "not-a-decimal"),
            {op_replace("/ladders/0/rungs/1/rate", "\"6\""), "ladder-not-falling",
             "/ladders/0/rungs/1"},
            {op_replace("/ladders/0/rungs/1/rate", "\"5.875\""), "ladder-not-falling",
             "/ladders/0/rungs/1"},
            {op_replace("/ladders/0/rungs/1/points", "\"1\""), "ladder-not-falling",
             "/ladders/0/rungs/1"},
            {op_replace("/ladders/0/rungs/1/points", "\"1.125\""), "ladder-not-falling",
             "/ladders/0/rungs/1"},
            bad("/adjustments/0/programs", "\"any-loan\"", "wrong-kind"),
            bad("/adjustments/0/rows/0/score", "\"low\"", "not-a-band"),
            missing("/mortgage_insurance/0/source", "/mortgage_insurance/0"),
            bad("/costs/0/section", "\"lender\"", "not-one-of"),
            {op_add("/adjustments/0/program", "\"x\""), "member-unknown", "/adjustments/0/program"},
        });
}

TEST_CASE("A place: taxes, districts, insurance, escrow, dues and closing costs") {
    const Read read(read_place, place_text);
    INFO(listing(read.findings));
    REQUIRE(read.findings.none());
    const Place& place = read.item;
    CHECK(place.status == Status::published);
    CHECK(place.loan_limit_area == LimitArea::ceiling);
    CHECK(place.rural_eligible);
    CHECK(place.assessed_percent == Percent(decimal("80")));
    CHECK(place.levies.at(0).mills == decimal("6.25"));
    REQUIRE(place.exemptions.size() == 2);
    CHECK(place.exemptions[0].amount == money("5000"));
    CHECK(place.exemptions[0].from_year == 2);
    CHECK(place.exemptions[1].amount == std::nullopt);
    CHECK(place.exemptions[1].percent == Percent(decimal("10")));
    CHECK(place.exemptions[1].from_year == 1);
    REQUIRE(place.tax_due.size() == 2);
    CHECK(place.tax_due[1].month == 11);
    CHECK(place.tax_due[1].day == 30);
    CHECK(place.tax_due[1].share == Percent(decimal("40")));
    REQUIRE(place.land_only.has_value());
    CHECK(place.land_only->months == 6);
    CHECK(place.districts.at(0).mills == decimal("0.5"));
    CHECK(place.districts.at(1).yearly == money("120"));
    CHECK(place.premiums[MonthPart::flood_insurance] == money("700"));
    CHECK(place.premiums[MonthPart::wind_insurance] == money("90"));
    CHECK(place.escrow.cushion_months == 1);
    CHECK(place.escrow.prepaid_insurance_months == 14);
    CHECK(place.dues.at(0).monthly == money("46.50"));
    REQUIRE(place.closing_costs.size() == 5);
    CHECK(place.closing_costs[0].paid_by == PaidBy::seller);
    CHECK(place.closing_costs[1].base == CostBase::loan);
    CHECK(place.closing_costs[1].percent == Percent(decimal("0.18")));
    CHECK(place.closing_costs[2].base == CostBase::price);
    CHECK(place.closing_costs[3].tiers.size() == 2);
    CHECK(place.closing_costs[3].policy == TitlePolicy::owner);
    CHECK(place.closing_costs[4].simultaneous == money("150"));
    CHECK(place.closing_costs[4].before_closing);
}

TEST_CASE("One mistake in a place is one problem") {
    check_rows(
        read_place, place_text,
        {
            missing("/format", ""),
            missing("/source", ""),
            missing("/loan_limit_area", ""),
            missing("/property_tax", ""),
            missing("/property_tax/assessed_percent", "/property_tax"),
            missing("/property_tax/levies/0/mills", "/property_tax/levies/0"),
            missing("/property_tax/exemptions/1/percent", "/property_tax/exemptions/1"),
            missing("/property_tax/land_only/land_percent", "/property_tax/land_only"),
            missing("/property_tax/due/0/on", "/property_tax/due/0"),
            missing("/districts/0/mills", "/districts/0"),
            missing("/insurance", ""),
            missing("/insurance/dwelling_percent", "/insurance"),
            missing("/insurance/homeowner", "/insurance"),
            missing("/insurance/flood/yearly", "/insurance/flood"),
            missing("/dues/0/monthly", "/dues/0"),
            missing("/closing_costs/0/name", "/closing_costs/0"),
            missing("/closing_costs/3/of", "/closing_costs/3"),
            bad("/format", "\"quoin/place/9\"", "format-unknown"),
            bad("/status", "\"from memory\"", "not-one-of"),
            bad("/loan_limit_area", "\"high\"", "not-one-of"),
            bad("/property_tax/exemptions/0/from_year", "0", "not-a-whole-number"),
            bad("/property_tax/exemptions/0/from_year", "6", "not-a-whole-number"),
            bad("/property_tax/land_only/months", "37", "not-a-whole-number"),
            bad("/property_tax/due/0/on", "\"02-29\"", "not-a-day"),
            bad("/property_tax/due/0/on", "\"5/31\"", "not-a-day"),
            {op_replace("/property_tax/due/0/percent", "\"50\""), "members-conflict",
             "/property_tax"},
            bad("/escrow/cushion_months", "3", "not-a-whole-number"), // 12 CFR 1024.17(c)(1)
            // Two months reach the first payment, from which the account pays.
            bad("/escrow/prepaid_insurance_months", "1", "not-a-whole-number"),
            bad("/escrow/prepaid_insurance_months", "25", "not-a-whole-number"),
            bad("/dues/0/monthly", "\"46.505\"", "not-money"),
            bad("/closing_costs/0/section", "\"fees\"", "not-one-of"),
            bad("/closing_costs/0/paid_by", "\"builder\"", "not-one-of"),
            bad("/closing_costs/4/paid", "\"later\"", "not-one-of"),
            // A cost has one size; a simultaneous rate is a lender's policy's.
            {op_add("/closing_costs/0/percent_of_loan", "\"1\""), "members-conflict",
             "/closing_costs/0"},
            {op_remove("/closing_costs/0/amount"), "members-conflict", "/closing_costs/0"},
            {op_replace("/closing_costs/4/title_policy", "\"owner\""), "members-conflict",
             "/closing_costs/4"},
            {op_add("/closing_costs/3/tiers/0/rate", "1"), "member-unknown",
             "/closing_costs/3/tiers/0/rate"},
            {op_add("/closing_costs/3/tiers/-", R"({"per_thousand": "2"})"), "members-conflict",
             "/closing_costs/3/tiers/2"},
            {op_add("/closing_costs/3/tiers/1", R"({"up_to": "100000", "per_thousand": "3.5"})"),
             "members-conflict", "/closing_costs/3/tiers/1"},
            {op_add("/closing_costs/3/tiers/0", R"({"per_thousand": "5"})"), "members-conflict",
             "/closing_costs/3/tiers/1"},
        });
}

TEST_CASE("What is only ever paid is not below zero") {
    check_rows(read_place, place_text,
               {
                   bad("/property_tax/assessed_percent", "\"-80\"", "out-of-range"),
                   bad("/property_tax/levies/0/mills", "\"-6.25\"", "out-of-range"),
                   bad("/property_tax/exemptions/0/amount", "\"-0.01\"", "out-of-range"),
                   bad("/property_tax/exemptions/1/percent", "\"-10\"", "out-of-range"),
                   bad("/property_tax/due/0/percent", "\"-60\"", "out-of-range"),
                   bad("/property_tax/land_only/land_percent", "\"-20\"", "out-of-range"),
                   bad("/districts/0/mills", "\"-0.5\"", "out-of-range"),
                   bad("/districts/1/yearly", "\"-120\"", "out-of-range"),
                   bad("/insurance/dwelling_percent", "\"-75\"", "out-of-range"),
                   bad("/insurance/flood/yearly", "\"-700\"", "out-of-range"),
                   bad("/insurance/wind/yearly", "\"-90\"", "out-of-range"),
                   {op_replace("/insurance/homeowner/rows/0/value", "\"-4\""), "out-of-range",
                    "/insurance/homeowner"},
                   bad("/dues/0/monthly", "\"-46.50\"", "out-of-range"),
                   bad("/closing_costs/0/amount", "\"-450\"", "out-of-range"),
                   bad("/closing_costs/1/percent_of_loan", "\"-0.18\"", "out-of-range"),
                   bad("/closing_costs/2/per_thousand_of_price", "\"-1.5\"", "out-of-range"),
                   bad("/closing_costs/3/tiers/0/per_thousand", "\"-4\"", "out-of-range"),
                   bad("/closing_costs/4/simultaneous", "\"-150\"", "out-of-range"),
               });
    check_rows(read_rate_sheet, sheet_text,
               {{op_replace("/mortgage_insurance/0/rows/0/value", "\"-0.6\""), "out-of-range",
                 "/mortgage_insurance/0"},
                bad("/costs/0/amount", "\"-900\"", "out-of-range")});
    check_rows(read_with_methods, program_text,
               {{op_replace("/rules/upfront_fee/0/rows/0/value", "\"-1\""), "out-of-range",
                 "/rules/upfront_fee/0"}});
    // Points may be a credit.
    const Read read(
        read_rate_sheet,
        patched(sheet_text, "[" + op_replace("/adjustments/0/rows/0/value", "\"-0.5\"") + "]"));
    CHECK(read.findings.none());
}

TEST_CASE("Lending data reads any mix of its files, each id once, the newest sheet of a day") {
    const auto document = [](const std::string& text) { return Parsed(text).document; };
    const std::string older = patched(sheet_text, "[" + op_replace("/id", "\"older\"") + "," +
                                                      op_replace("/date", "\"2026-10-16\"") + "]");
    Findings findings;
    const Lending lending = read_lending(
        {document(sheet_text), document(program_text), document(older), document(place_text)},
        findings);
    INFO(listing(findings));
    REQUIRE(findings.none());
    CHECK(lending.programs.size() == 1);
    CHECK(lending.places.size() == 1);
    REQUIRE(lending.sheets.size() == 2);
    CHECK(lending.newest_sheet(date("2026-10-15")) == nullptr);
    CHECK(lending.newest_sheet(date("2026-10-16"))->id == "older");
    CHECK(lending.newest_sheet(date("2026-11-19"))->id == "older");
    CHECK(lending.newest_sheet(date("2026-11-20"))->id == "day");
    Findings twice;
    static_cast<void>(read_lending({document(place_text), document(place_text)}, twice));
    CHECK(problem_ids(twice) == Ids{"id-repeated"});
}

TEST_CASE("Every shipped lending file reads without a problem and says where it is from") {
    int tables = 0;
    const auto check_table = [&](const BandTable& table) {
        ++tables;
        CHECK(table.source.size() > 10);
        CHECK_FALSE(table.values.empty());
    };
    std::vector<Parsed> files; // hold the texts that the documents point into
    std::vector<Document> documents;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(
             std::filesystem::path(QUOIN_SOURCE_DIR) / "rates")) {
        if (entry.path().extension() != ".json") continue;
        CAPTURE(entry.path().string());
        std::ifstream file(entry.path(), std::ios::binary);
        std::ostringstream text;
        text << file.rdbuf();
        files.emplace_back(text.str());
        REQUIRE(files.back().findings.none());
        documents.push_back(files.back().document);
    }
    Findings findings;
    for (Document& document : documents) choose_texts(document, Language::english, findings);
    const Lending lending = read_lending(documents, findings);
    INFO(listing(findings));
    REQUIRE(findings.none());
    REQUIRE(lending.programs.size() + lending.sheets.size() + lending.places.size() ==
            documents.size());
    for (const LoanProgram& program : lending.programs) {
        for (const auto& rule : program.rules) std::for_each(rule.begin(), rule.end(), check_table);
    }
    for (const RateSheet& sheet : lending.sheets) {
        CHECK(sheet.sample);
        for (const Adjustment& adjustment : sheet.adjustments) check_table(adjustment.table);
        for (const BandTable& table : sheet.mortgage_insurance) check_table(table);
    }
    for (const Place& place : lending.places) check_table(place.homeowner);
    CHECK(tables >= 25);
}
