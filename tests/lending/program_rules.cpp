// The shipped programs' tables, looked up at, just below and just above each published edge.
//
// What is published stands beside each figure; the tables themselves are in rates/programs/.
#include <shown.hpp>

#include <quoin/answers/desk.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const LoanProgram& program(const char* id) {
    const auto& programs = six_programs().desk.lending.programs;
    return quoin::at(programs, index_of(programs, id));
}

/// Where a table is read: base loan and LTV of a term, and so on.
class At {
  public:
    At& ltv(const char* percent) { return set(Dimension::ltv, percent); }
    At& down(const char* percent) { return set(Dimension::down, percent); }
    At& term(const char* months) { return set(Dimension::term, months); }
    At& score(const char* score) { return set(Dimension::score, score); }
    At& base_loan(const char* dollars) {
        where_.set(Dimension::base_loan, money(dollars));
        return *this;
    }
    At& use(EntitlementUse use) { return named(Dimension::use, static_cast<int>(use)); }
    At& area(LimitArea area) { return named(Dimension::area, static_cast<int>(area)); }
    At& occupancy(Occupancy who) { return named(Dimension::occupancy, static_cast<int>(who)); }
    [[nodiscard]] const Case& where() const { return where_; }

  private:
    At& set(Dimension dimension, const char* value) {
        where_.set(dimension, decimal(value));
        return *this;
    }
    At& named(Dimension dimension, int index) {
        where_.set(dimension, Decimal::whole(index));
        return *this;
    }

    Case where_;
};

const Date as_of = date("2026-11-24");
const Date closing = date("2027-05-14");

/// The value of a program's rule; nothing where there is no table or no row.
std::optional<Decimal> value(const char* id, Rule rule, const At& at, Date day = as_of,
                             Date closes = closing) {
    const BandTable* table = program(id).in_force(rule, day, closes);
    return table != nullptr ? table->find(at.where()) : std::nullopt;
}

std::optional<Decimal> percent(const char* text) {
    return *text == '\0' ? std::nullopt : std::optional(decimal(text));
}

} // namespace

TEST_CASE("FHA annual premium and its months, HUD Mortgagee Letter 2023-05") {
    // Rows as restated second-hand; the letter's threshold of 726,200 was read in the letter.
    struct Row {
        const char* term;
        const char* base_loan;
        const char* ltv;
        const char* percent;
        const char* months; ///< "term" for the whole term
    };
    for (const Row& row : {
             // Over 15 years, to 726,200: 0.50 to 95 %, 0.55 above; 11 years to 90 %.
             Row{"360", "726200", "0.01", "0.50", "132"},
             Row{"360", "726200", "90", "0.50", "132"},
             Row{"360", "726200", "90.01", "0.50", "term"},
             Row{"360", "726200", "95", "0.50", "term"},
             Row{"360", "726200", "95.01", "0.55", "term"},
             Row{"360", "726200", "96.5", "0.55", "term"},
             Row{"181", "100000", "95.01", "0.55", "term"},
             // Over 15 years, above 726,200: 0.70 to 95 %, 0.75 above.
             Row{"360", "726201", "90", "0.70", "132"},
             Row{"360", "726200.01", "90.01", "0.70", "term"},
             Row{"360", "726201", "95", "0.70", "term"},
             Row{"360", "726201", "95.01", "0.75", "term"},
             // To 15 years, to 726,200: 0.15 to 90 %, 0.40 above.
             Row{"180", "726200", "90", "0.15", "132"},
             Row{"180", "726200", "90.01", "0.40", "term"},
             Row{"120", "100000", "96.5", "0.40", "term"},
             // To 15 years, above 726,200: 0.15 to 78 %, 0.40 to 90 %, 0.65 above.
             Row{"180", "726201", "78", "0.15", "132"},
             Row{"180", "726201", "78.01", "0.40", "132"},
             Row{"180", "726201", "90", "0.40", "132"},
             Row{"180", "726201", "90.01", "0.65", "term"},
         }) {
        CAPTURE(row.term, row.base_loan, row.ltv);
        const At at = At().term(row.term).base_loan(row.base_loan).ltv(row.ltv);
        CHECK(value("fha", Rule::annual_fee, at) == decimal(row.percent));
        const bool whole = std::string(row.months) == "term";
        CHECK(value("fha", Rule::annual_fee_months, at) ==
              (whole ? whole_term : decimal(row.months)));
    }
}

TEST_CASE("FHA premiums begin with the letter's day, by the closing's date") {
    // ML 2023-05: endorsed on or after 20 March 2023.
    const At at = At().term("360").base_loan("300000").ltv("96.5");
    CHECK_FALSE(value("fha", Rule::annual_fee, at, as_of, date("2023-03-19")).has_value());
    CHECK(value("fha", Rule::annual_fee, at, as_of, date("2023-03-20")) == decimal("0.55"));
    CHECK(value("fha", Rule::upfront_fee, At(), as_of, date("2023-03-20")) == decimal("1.75"));
}

TEST_CASE("FHA lends 96.5 % from 580 and 90 % from 500, HUD Handbook 4000.1 (second-hand)") {
    // 3.5 % minimum investment: 12 USC 1709(b)(9).
    struct Row {
        const char* score;
        const char* percent;
    };
    for (const Row& row : {Row{"499", ""}, Row{"500", "90"}, Row{"579", "90"}, Row{"580", "96.5"},
                           Row{"850", "96.5"}}) {
        CAPTURE(row.score);
        CHECK(value("fha", Rule::maximum_ltv, At().score(row.score)) == percent(row.percent));
    }
    CHECK_FALSE(value("fha", Rule::maximum_ltv, At()).has_value()); // no score, no row
    // 4000.1: interested parties up to 6 % of the price.
    CHECK(value("fha", Rule::contribution_cap, At().ltv("96.5")) == decimal("6"));
}

TEST_CASE("FHA limits are 65 and 150 % of the conforming limit, cut to dollars") {
    // ML 2024-21 and ML 2025-23 (second-hand); the percents: 12 USC 1709(b)(2).
    struct Row {
        const char* day;
        const char* floor;
        const char* ceiling;
    };
    for (const Row& row : {
             Row{"2024-12-31", "", ""},
             Row{"2025-01-01", "524225", "1209750"},
             Row{"2025-12-31", "524225", "1209750"},
             Row{"2026-01-01", "541287", "1249125"},
             Row{"2026-12-31", "541287", "1249125"},
             Row{"2027-01-01", "", ""},
         }) {
        CAPTURE(row.day);
        const auto limit = [&](const char* id, LimitArea area) {
            return value(id, Rule::loan_limit, At().area(area), date(row.day));
        };
        CHECK(limit("fha", LimitArea::baseline) == percent(row.floor));
        CHECK(limit("fha", LimitArea::ceiling) == percent(row.ceiling));
        const auto conforming = limit("conventional", LimitArea::baseline);
        REQUIRE(conforming.has_value() == limit("fha", LimitArea::baseline).has_value());
        if (!conforming) continue;
        const Money baseline = times(Money::dollars(1), *conforming, Rounding::down);
        const auto share = [&](const char* text) {
            const Money part = percent_of(baseline, Percent(decimal(text)), Rounding::down);
            return Decimal::whole(divide_rounded<std::int64_t>(part.count(), 100, Rounding::down));
        };
        CHECK(limit("fha", LimitArea::baseline) == share("65"));
        CHECK(limit("fha", LimitArea::ceiling) == share("150"));
    }
}

TEST_CASE("Conforming limits, FHFA: 2025 and 2026 by the quote's day (second-hand)") {
    struct Row {
        const char* day;
        const char* baseline;
        const char* ceiling;
    };
    for (const Row& row : {
             Row{"2024-12-31", "", ""},
             Row{"2025-01-01", "806500", "1209750"},
             Row{"2025-12-31", "806500", "1209750"},
             Row{"2026-01-01", "832750", "1249125"},
             Row{"2026-12-31", "832750", "1249125"},
             Row{"2027-01-01", "", ""},
         }) {
        CAPTURE(row.day);
        CHECK(value("conventional", Rule::loan_limit, At().area(LimitArea::baseline),
                    date(row.day)) == percent(row.baseline));
        CHECK(value("conventional", Rule::loan_limit, At().area(LimitArea::ceiling),
                    date(row.day)) == percent(row.ceiling));
    }
}

TEST_CASE("VA funding fee by use and down payment, 38 USC 3729(b)(2), at 5 and 10 %") {
    using Use = EntitlementUse;
    struct Row {
        Use use;
        const char* down;
        const char* since_2023; ///< closed on or after 7 April 2023
        const char* before;     ///< closed from 1 January 2020
    };
    for (const Row& row : {
             Row{Use::first, "0", "2.15", "2.30"},
             Row{Use::first, "4.999999", "2.15", "2.30"},
             Row{Use::first, "5", "1.50", "1.65"},
             Row{Use::first, "9.999999", "1.50", "1.65"},
             Row{Use::first, "10", "1.25", "1.40"},
             Row{Use::first, "60", "1.25", "1.40"},
             Row{Use::subsequent, "0", "3.30", "3.60"},
             Row{Use::subsequent, "4.999999", "3.30", "3.60"},
             Row{Use::subsequent, "5", "1.50", "1.65"},
             Row{Use::subsequent, "9.999999", "1.50", "1.65"},
             Row{Use::subsequent, "10", "1.25", "1.40"},
             Row{Use::exempt, "0", "0", "0"}, // 38 USC 3729(c)
             Row{Use::exempt, "20", "0", "0"},
         }) {
        CAPTURE(static_cast<int>(row.use), row.down);
        const At at = At().use(row.use).down(row.down);
        const auto fee = [&](const char* closes) {
            return value("va", Rule::upfront_fee, at, as_of, date(closes));
        };
        CHECK_FALSE(fee("2019-12-31").has_value());
        CHECK(fee("2020-01-01") == decimal(row.before));
        CHECK(fee("2023-04-06") == decimal(row.before));
        CHECK(fee("2023-04-07") == decimal(row.since_2023));
        CHECK(fee("2027-05-14") == decimal(row.since_2023));
    }
}

TEST_CASE("VA: all of the value, 4 % concessions, no annual fee and no limit") {
    // 38 USC 3703, 3710; VA Pamphlet 26-7, chapter 8 (second-hand).
    CHECK(value("va", Rule::maximum_ltv, At()) == decimal("100"));
    CHECK(value("va", Rule::contribution_cap, At()) == decimal("4"));
    CHECK(program("va").annual == AnnualMethod::none);
    CHECK(program("va").in_force(Rule::loan_limit, as_of, closing) == nullptr);
    CHECK(program("va").in_force(Rule::annual_fee, as_of, closing) == nullptr);
}

TEST_CASE("USDA: 1 % up front, 0.35 % a year for the term, all of the value") {
    // Fees since 1 October 2016 (7 CFR 3555.107, second-hand); caps in 42 USC 1472(h)(8): 3.5 and
    // 0.5 %; all of the value and the fee: 42 USC 1472(h)(7).
    CHECK(value("usda", Rule::upfront_fee, At()) == decimal("1"));
    CHECK(value("usda", Rule::annual_fee, At()) == decimal("0.35"));
    CHECK(value("usda", Rule::annual_fee_months, At()) == whole_term);
    CHECK(value("usda", Rule::maximum_ltv, At()) == decimal("100"));
    CHECK(*value("usda", Rule::upfront_fee, At()) <= decimal("3.5"));
    CHECK(*value("usda", Rule::annual_fee, At()) <= decimal("0.5"));
    CHECK(value("usda", Rule::contribution_cap, At()) == decimal("6")); // from memory
    CHECK_FALSE(value("usda", Rule::annual_fee, At(), date("2016-09-30")).has_value());
}

TEST_CASE("Conventional: 97 % of a primary home from 620, Fannie Mae Eligibility Matrix of 2021") {
    using Who = Occupancy;
    // The minimum of 620: B3-5.1-01; since 16 November 2025 common practice, no source.
    for (const char* day : {"2021-05-26", "2025-11-15", "2025-11-16", "2026-11-24"}) {
        CAPTURE(day);
        const auto most = [&](const char* score, Who who) {
            return value("conventional", Rule::maximum_ltv, At().score(score).occupancy(who),
                         date(day));
        };
        CHECK(most("620", Who::primary) == decimal("97"));
        CHECK_FALSE(most("619", Who::primary).has_value());
        CHECK_FALSE(most("800", Who::second).has_value());
    }
}

TEST_CASE("Conventional: contributions of interested parties, Fannie Mae B3-4.1-02") {
    using Who = Occupancy;
    struct Row {
        Who who;
        const char* ltv;
        const char* percent;
    };
    for (const Row& row : {
             Row{Who::primary, "0.01", "9"},
             Row{Who::primary, "75", "9"},
             Row{Who::primary, "75.01", "6"},
             Row{Who::primary, "90", "6"},
             Row{Who::primary, "90.01", "3"},
             Row{Who::primary, "97", "3"},
             Row{Who::second, "75", "9"},
             Row{Who::second, "75.01", "6"},
             Row{Who::second, "90", "6"},
             Row{Who::second, "90.01", "3"},
             Row{Who::investment, "50", "2"},
             Row{Who::investment, "90.01", "2"},
         }) {
        CAPTURE(static_cast<int>(row.who), row.ltv);
        CHECK(value("conventional", Rule::contribution_cap, At().ltv(row.ltv).occupancy(row.who)) ==
              decimal(row.percent));
    }
}

TEST_CASE("Conventional: standard mortgage-insurance coverage, Fannie Mae B7-1-02") {
    struct Row {
        const char* ltv;
        const char* to_20_years;
        const char* above;
    };
    for (const Row& row : {
             Row{"80", "", ""},
             Row{"80.01", "6", "12"},
             Row{"85", "6", "12"},
             Row{"85.01", "12", "25"},
             Row{"90", "12", "25"},
             Row{"90.01", "25", "30"},
             Row{"95", "25", "30"},
             Row{"95.01", "35", "35"},
             Row{"97", "35", "35"},
             Row{"97.01", "", ""},
         }) {
        CAPTURE(row.ltv);
        const auto coverage = [&](const char* term) {
            return value("conventional", Rule::mi_coverage, At().ltv(row.ltv).term(term));
        };
        CHECK(coverage("180") == percent(row.to_20_years));
        CHECK(coverage("240") == percent(row.to_20_years));
        CHECK(coverage("241") == percent(row.above));
        CHECK(coverage("360") == percent(row.above));
    }
}

TEST_CASE("What the coverage leaves the lender exposed to, as printed with the table") {
    // Fannie Mae's exposure figures (second-hand): 97 % with 35 % coverage leaves 63.05, and so on.
    struct Row {
        const char* ltv;
        const char* left; ///< percent of value, to the hundredth
    };
    for (const Row& row :
         {Row{"97", "63.05"}, Row{"95", "66.5"}, Row{"90", "67.5"}, Row{"85", "74.8"}}) {
        CAPTURE(row.ltv);
        const auto covered =
            value("conventional", Rule::mi_coverage, At().ltv(row.ltv).term("360"));
        REQUIRE(covered.has_value());
        const Money loan = times(Money::dollars(1000), decimal(row.ltv), Rounding::down);
        const Money left = loan - percent_of(loan, Percent(*covered), Rounding::down);
        CHECK(left == times(Money::dollars(1000), decimal(row.left), Rounding::down));
    }
}
