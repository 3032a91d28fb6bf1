// The shipped programs' tables, looked up at, just below and just above each published edge.
//
// What is published stands beside each figure; the tables themselves are in rates/programs/.
#include <shown.hpp>

#include <quoin/inquiry/desk.hpp>
#include <quoin/lending/editions.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const LoanProgram& program(const char* id) {
    const auto& programs = six_programs().desk.lending.programs;
    return quoin::at(programs, index_of(programs, id).value());
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
    const auto editions = editions_of(program(id), {day, closes});
    const BandTable* table = editions.rules[static_cast<std::size_t>(rule)].rule();
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
             // Over 15 years, to 726,200: 0.50 to 95%, 0.55 above; 11 years to 90%.
             Row{"360", "726200", "0.01", "0.50", "132"},
             Row{"360", "726200", "90", "0.50", "132"},
             Row{"360", "726200", "90.01", "0.50", "term"},
             Row{"360", "726200", "95", "0.50", "term"},
             Row{"360", "726200", "95.01", "0.55", "term"},
             Row{"360", "726200", "96.5", "0.55", "term"},
             Row{"181", "100000", "95.01", "0.55", "term"},
             // Over 15 years, above 726,200: 0.70 to 95%, 0.75 above.
             Row{"360", "726201", "90", "0.70", "132"},
             Row{"360", "726200.01", "90.01", "0.70", "term"},
             Row{"360", "726201", "95", "0.70", "term"},
             Row{"360", "726201", "95.01", "0.75", "term"},
             // To 15 years, to 726,200: 0.15 to 90%, 0.40 above.
             Row{"180", "726200", "90", "0.15", "132"},
             Row{"180", "726200", "90.01", "0.40", "term"},
             Row{"120", "100000", "96.5", "0.40", "term"},
             // To 15 years, above 726,200: 0.15 to 78%, 0.40 to 90%, 0.65 above.
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

TEST_CASE("FHA lends 96.5% from 580 and 90% from 500, HUD Handbook 4000.1 (second-hand)") {
    // 3.5% minimum investment: 12 USC 1709(b)(9).
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
    // 4000.1: interested parties up to 6% of the price.
    CHECK(value("fha", Rule::contribution_cap, At().ltv("96.5")) == decimal("6"));
}

TEST_CASE("FHA limits are 65 and 150% of the conforming limit, cut to dollars") {
    // ML 2024-21 and ML 2025-23 (second-hand); the percents: 12 USC 1709(b)(2).
    struct Row {
        const char* day;
        const char* floor;
        const char* ceiling;
    };
    for (const Row& row : {
             Row{"2024-12-31", "", ""}, Row{"2025-01-01", "524225", "1209750"},
             Row{"2025-12-31", "524225", "1209750"}, Row{"2026-01-01", "541287", "1249125"},
             Row{"2026-12-31", "541287", "1249125"},
             Row{"2027-01-01", "541287", "1249125"}, // used on, and told
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
             Row{"2024-12-31", "", ""}, Row{"2025-01-01", "806500", "1209750"},
             Row{"2025-12-31", "806500", "1209750"}, Row{"2026-01-01", "832750", "1249125"},
             Row{"2026-12-31", "832750", "1249125"},
             Row{"2027-01-01", "832750", "1249125"}, // used on, and told
         }) {
        CAPTURE(row.day);
        CHECK(value("conventional", Rule::loan_limit, At().area(LimitArea::baseline),
                    date(row.day)) == percent(row.baseline));
        CHECK(value("conventional", Rule::loan_limit, At().area(LimitArea::ceiling),
                    date(row.day)) == percent(row.ceiling));
    }
}

TEST_CASE("VA funding fee by use and down payment, 38 USC 3729(b)(2), at 5 and 10%") {
    using Use = EntitlementUse;
    struct Row {
        Use use;
        const char* down;
        const char* since_2023; ///< closed on or after 7 April 2023
        const char* before;     ///< closed from 1 January 2020
        const char* since_2031; ///< closed on or after 29 November 2031 (Public Law 118-83)
    };
    for (const Row& row : {
             Row{Use::first, "0", "2.15", "2.30", "1.40"},
             Row{Use::first, "4.999999", "2.15", "2.30", "1.40"},
             Row{Use::first, "5", "1.50", "1.65", "0.75"},
             Row{Use::first, "9.999999", "1.50", "1.65", "0.75"},
             Row{Use::first, "10", "1.25", "1.40", "0.50"},
             Row{Use::first, "60", "1.25", "1.40", "0.50"},
             Row{Use::subsequent, "0", "3.30", "3.60", "1.25"},
             Row{Use::subsequent, "4.999999", "3.30", "3.60", "1.25"},
             Row{Use::subsequent, "5", "1.50", "1.65", "0.75"},
             Row{Use::subsequent, "9.999999", "1.50", "1.65", "0.75"},
             Row{Use::subsequent, "10", "1.25", "1.40", "0.50"},
             Row{Use::exempt, "0", "0", "0", "0"}, // 38 USC 3729(c)
             Row{Use::exempt, "20", "0", "0", "0"},
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
        CHECK(fee("2031-11-28") == decimal(row.since_2023));
        CHECK(fee("2031-11-29") == decimal(row.since_2031));
        CHECK(fee("2040-06-01") == decimal(row.since_2031));
    }
}

TEST_CASE("VA: all of the value, 4% concessions, no annual fee and no limit") {
    // 38 USC 3703, 3710; VA Pamphlet 26-7, chapter 8 (second-hand).
    CHECK(value("va", Rule::maximum_ltv, At()) == decimal("100"));
    CHECK(value("va", Rule::contribution_cap, At()) == decimal("4"));
    CHECK(program("va").annual == nullptr);
    for (const Rule none : {Rule::loan_limit, Rule::annual_fee}) {
        CHECK(program("va").rules[static_cast<std::size_t>(none)].empty());
    }
}

TEST_CASE("USDA: 1% up front, 0.35% a year for the term, all of the value") {
    // Fees since 1 October 2016 (7 CFR 3555.107, second-hand); caps in 42 USC 1472(h)(8): 3.5 and
    // 0.5%; all of the value and the fee: 42 USC 1472(h)(7).
    CHECK(value("usda", Rule::upfront_fee, At()) == decimal("1"));
    CHECK(value("usda", Rule::annual_fee, At()) == decimal("0.35"));
    CHECK(value("usda", Rule::annual_fee_months, At()) == whole_term);
    CHECK(value("usda", Rule::maximum_ltv, At()) == decimal("100"));
    CHECK(*value("usda", Rule::upfront_fee, At()) <= decimal("3.5"));
    CHECK(*value("usda", Rule::annual_fee, At()) <= decimal("0.5"));
    CHECK(value("usda", Rule::contribution_cap, At()) == decimal("6")); // from memory
    CHECK_FALSE(value("usda", Rule::annual_fee, At(), date("2016-09-30")).has_value());
}

TEST_CASE("Conventional: 97% of a primary home from 620, Fannie Mae Eligibility Matrix of 2021") {
    // The minimum of 620: B3-5.1-01; since 16 November 2025 common practice, no source.
    for (const char* day : {"2021-05-26", "2025-11-15", "2025-11-16", "2026-11-24"}) {
        CAPTURE(day);
        const auto most = [&](const char* score) {
            return value("conventional", Rule::maximum_ltv, At().score(score), date(day));
        };
        CHECK(most("620") == decimal("97"));
        CHECK_FALSE(most("619").has_value());
    }
}

TEST_CASE("Conventional: contributions of interested parties, Fannie Mae B3-4.1-02") {
    struct Row {
        const char* ltv;
        const char* percent;
    };
    for (const Row& row : {Row{"0.01", "9"}, Row{"75", "9"}, Row{"75.01", "6"}, Row{"90", "6"},
                           Row{"90.01", "3"}, Row{"97", "3"}}) {
        CAPTURE(row.ltv);
        CHECK(value("conventional", Rule::contribution_cap, At().ltv(row.ltv)) ==
              decimal(row.percent));
    }
}
