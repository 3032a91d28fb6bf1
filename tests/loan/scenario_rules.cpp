// Which tables govern a scenario: by program, date, lock, and where rows change as the loan grows.
#include <shown.hpp>

#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

bool has_edge(const ScenarioRules& rules, Dimension dimension, const char* last) {
    for (const Edge& edge : rules.edges) {
        if (edge.dimension == dimension && edge.last == decimal(last).billionths()) return true;
    }
    return false;
}

BandTable of_value(const char* value) {
    BandTable table;
    table.source = "invented";
    table.values = {decimal(value)};
    table.written = {"any"};
    return table;
}

} // namespace

TEST_CASE("A rule is the table in force on its own date") {
    Purchase home("va");
    const auto fee = [&] { return home.rules().rule(Rule::upfront_fee); };
    home.as_of = date("2023-04-07");
    home.closing = date("2023-04-06"); // the fee looks at the closing
    REQUIRE(fee() != nullptr);
    CHECK(fee()->until == date("2023-04-07"));
    home.closing = date("2023-04-07");
    CHECK(fee()->effective == date("2023-04-07"));
    home.closing = date("2031-11-29"); // the code's own last row
    CHECK(fee()->effective == date("2031-11-29"));
    home.closing = date("2019-12-31");
    CHECK(fee() == nullptr);
    CHECK(home.rules().edition(Rule::upfront_fee).state() == Edition<BandTable>::State::not_yet);
    // A limit looks at the day of the quote.
    Purchase fha("fha");
    fha.as_of = date("2025-12-31");
    fha.closing = date("2026-06-30");
    CHECK(fha.rules().rule(Rule::loan_limit)->until == date("2026-01-01"));
}

TEST_CASE("The ladder, the adjustments and the insurance factors are the program's of that day") {
    Purchase home("conventional");
    home.sheet.adjustments = {{{"fha"}, of_value("1")},
                              {{"va", "conventional"}, of_value("2")},
                              {{"conventional"}, of_value("3")}};
    home.sheet.adjustments[2].table.until = date("2026-11-24"); // ends the day before the quote
    const ScenarioRules rules = home.rules();
    REQUIRE(rules.adjustments.size() == 1);
    CHECK(rules.adjustments[0]->value(0) == decimal("2"));
    REQUIRE(rules.ladder != nullptr);
    CHECK(rules.ladder->program == "conventional");
    home.scenario.lock_days = 61;
    CHECK(home.rules().ladder == nullptr);
    REQUIRE(rules.mi_factors.rule() != nullptr);
    home.sheet.mortgage_insurance.front().effective = date("2026-11-25");
    CHECK(home.rules().mi_factors.rule() == nullptr);
    CHECK_FALSE(home.rules().mi_factors.is_known());
    home.sheet.mortgage_insurance.push_back(of_value("0.5"));
    REQUIRE(home.rules().mi_factors.rule() != nullptr);
    CHECK(home.rules().mi_factors.rule()->value(0) == decimal("0.5"));
}

TEST_CASE("First payment, days of the year and costs come along") {
    Purchase home("conventional");
    struct Row {
        const char* closing;
        const char* first;
    };
    // The first of the second month after (common practice, no source).
    for (const Row& row : {Row{"2027-05-14", "2027-07-01"}, Row{"2027-05-31", "2027-07-01"},
                           Row{"2027-06-01", "2027-08-01"}, Row{"2027-11-30", "2028-01-01"},
                           Row{"2027-12-01", "2028-02-01"}, Row{"2028-02-29", "2028-04-01"}}) {
        CAPTURE(row.closing);
        home.closing = date(row.closing);
        CHECK(home.rules().first_payment == date(row.first));
    }
    home.sheet.per_diem_year = 365;
    CHECK(home.rules().per_diem_year == 365);
    home.sheet.costs.push_back({});
    home.place.closing_costs.push_back({});
    CHECK(home.rules().closing_costs.all().size() == 2);
}

TEST_CASE("Edges: the last value before each row that moves with the loan, each once and rising") {
    const Purchase home("va");
    const ScenarioRules rules = home.rules();
    // Bands "< 5", ">= 5, < 10" and ">= 10" of the down payment meet at the billionth under them.
    CHECK(has_edge(rules, Dimension::down, "4.999999999"));
    CHECK(has_edge(rules, Dimension::down, "9.999999999"));
    CHECK_FALSE(has_edge(rules, Dimension::down, "5"));
    const Purchase fha("fha");
    const ScenarioRules of_fha = fha.rules();
    CHECK(has_edge(of_fha, Dimension::ltv, "90"));
    CHECK(has_edge(of_fha, Dimension::ltv, "95"));
    CHECK(has_edge(of_fha, Dimension::ltv, "78"));
    CHECK(has_edge(of_fha, Dimension::base_loan, "726200"));
    CHECK_FALSE(has_edge(of_fha, Dimension::term, "180")); // the term does not move
    for (const ScenarioRules& each : {rules, of_fha}) {
        for (std::size_t i = 1; i < each.edges.size(); ++i) {
            const Edge& before = each.edges[i - 1];
            const Edge& edge = each.edges[i];
            CHECK((before.dimension < edge.dimension ||
                   (before.dimension == edge.dimension && before.last < edge.last)));
        }
    }
}
