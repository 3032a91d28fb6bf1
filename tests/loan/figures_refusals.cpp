// Why a loan cannot be had: every reason at once, in order, and one fewer with each thing mended.
#include <shown.hpp>

#include <functional>

#include <quoin/loan/fee_methods.hpp>

#include "support/purchase.hpp"
#include <quoin/lending/reading.hpp>

using namespace quoin;
using namespace quoin::test;

namespace {

/// A program that can refuse for every reason: rural, with a score, a limit and insurance.
const char* const strict_text = R"({
  "format": "quoin/program/1", "id": "conventional", "name": "Strict", "kind": "usda",
  "terms_months": [360], "annual": {"name": "Insurance", "method": "lender factor"},
  "rules": {
    "maximum_ltv": [{"status": "sample", "source": "invented", "value": "percent",
      "dimensions": ["score"], "rows": [{"score": ">= 620", "value": "95"}]}],
    "loan_limit": [{"status": "sample", "source": "invented", "value": "money",
      "dimensions": ["area"], "rows": [{"area": "baseline", "value": "500000"}]}]
  }
})";

/// Everything is wrong with it.
Purchase hopeless() {
    Purchase home("conventional", "600000");
    Findings findings;
    home.program = read_program(json(strict_text), fee_methods(), findings);
    if (!findings.none()) throw Refused(std::move(findings));
    home.place.rural_eligible = false;
    home.place.homeowner.values.clear();
    home.place.homeowner.bands.clear();
    home.place.homeowner.written.clear();
    home.sheet.mortgage_insurance.clear();
    home.years(25).by_note("1").down("0");
    home.scenario.score.reset();
    home.scenario.buydown = {Percent(decimal("2")), Percent(decimal("1"))};
    return home;
}

struct Step {
    const char* mended;
    std::function<void(Purchase&)> mend;
    std::vector<Barred> left;
};

void check_steps(Purchase home, const std::vector<Step>& steps) {
    for (const Step& step : steps) {
        CAPTURE(step.mended);
        step.mend(home);
        const LoanFigures f = home.figures();
        CHECK(why_not(f) == step.left);
        CHECK(f.available() == step.left.empty());
    }
}

} // namespace

TEST_CASE("Whether a loan is for rural places alone is the program's own policy") {
    for (const char* program : {"conventional", "usda"}) {
        CAPTURE(program);
        Purchase home(program);
        home.down_percent("20").place.rural_eligible = false;
        home.program.policy.rural_alone = false;
        CHECK(home.figures().available());
        home.program.policy.rural_alone = true;
        REQUIRE(home.figures().refusals.size() == 1);
        CHECK(home.figures().refusals[0].why == Barred::place_not_eligible);
        home.place.rural_eligible = true;
        CHECK(home.figures().available());
    }
}

TEST_CASE("From everything wrong to nothing, one thing mended a row") {
    using enum Barred;
    check_steps(
        hopeless(),
        {
            {"nothing",
             [](Purchase&) {},
             {term_not_offered, place_not_eligible, score_needed, loan_over_limit, rate_not_offered,
              mi_not_offered, insurance_not_offered, buydown_not_allowed}},
            {"the term",
             [](Purchase& home) { home.years(30); },
             {place_not_eligible, score_needed, loan_over_limit, rate_not_offered, mi_not_offered,
              insurance_not_offered, buydown_not_allowed}},
            {"the place",
             [](Purchase& home) { home.place.rural_eligible = true; },
             {score_needed, loan_over_limit, rate_not_offered, mi_not_offered,
              insurance_not_offered, buydown_not_allowed}},
            {"a score, but a low one",
             [](Purchase& home) { home.scenario.score = 619; },
             {score_below_minimum, loan_over_limit, rate_not_offered, mi_not_offered,
              insurance_not_offered, buydown_not_allowed}},
            {"the score, so that the loan is measured",
             [](Purchase& home) { home.scenario.score = 620; },
             {ltv_over_maximum, loan_over_limit, rate_not_offered, mi_not_offered,
              insurance_not_offered, buydown_not_allowed}},
            {"5% down",
             [](Purchase& home) { home.down_percent("5"); },
             {loan_over_limit, rate_not_offered, mi_not_offered, insurance_not_offered,
              buydown_not_allowed}},
            {"the price",
             [](Purchase& home) { home.home.contract_price = money("520000"); },
             {rate_not_offered, mi_not_offered, insurance_not_offered, buydown_not_allowed}},
            {"the rate",
             [](Purchase& home) { home.by_note("6.25"); },
             {mi_not_offered, insurance_not_offered}}, // a buydown of 6.25% is allowed
            {"insurance of the loan",
             [](Purchase& home) {
                 home.sheet.mortgage_insurance = Purchase("fha").sheet.mortgage_insurance;
             },
             {insurance_not_offered}},
            {"insurance of the home",
             [](Purchase& home) { home.place.homeowner = Purchase("fha").place.homeowner; },
             {}},
        });
}

TEST_CASE("Without cash the loan is the largest within the limit, and all else wrong is told too") {
    using enum Barred;
    Purchase home = hopeless();
    home.cash(money("100")); // less than the interest to the month's end
    check_steps(home,
                {
                    {"nothing",
                     [](Purchase&) {},
                     {term_not_offered, place_not_eligible, score_needed, rate_not_offered,
                      mi_not_offered, insurance_not_offered, buydown_not_allowed, cash_short}},
                    {"the score",
                     [](Purchase& h) { h.scenario.score = 700; },
                     {term_not_offered, place_not_eligible, rate_not_offered, mi_not_offered,
                      insurance_not_offered, buydown_not_allowed, cash_short}},
                    {"cash for all of it",
                     [](Purchase& h) { h.cash(money("700000")); },
                     {term_not_offered, place_not_eligible, rate_not_offered, insurance_not_offered,
                      buydown_not_allowed}},
                });
}

TEST_CASE("A refusal says what was found and what the limit is") {
    const auto only = [](const Purchase& home) {
        const LoanFigures f = home.figures();
        REQUIRE(f.refusals.size() == 1);
        return f.refusals.front();
    };
    // 97% of 412,345.67 is 399,975.2999: in cents, cut.
    Purchase home("conventional", "412345.67");
    const Refusal ltv = only(home.base_loan("399976"));
    CHECK(ltv.why == Barred::ltv_over_maximum);
    CHECK(ltv.found == money("399976"));
    CHECK(ltv.limit == money("399975.29"));
    CHECK(home.base_loan("399975").figures().available());
    // FHFA 2026: 832,750.
    Purchase large("conventional", "1200000");
    const Refusal limit = only(large.base_loan("832751"));
    CHECK(limit.why == Barred::loan_over_limit);
    CHECK(limit.found == money("832751"));
    CHECK(limit.limit == money("832750"));
    CHECK(large.base_loan("832750").figures().available());
    large.place.loan_limit_area = LimitArea::ceiling;
    CHECK(large.base_loan("832751").figures().available());
    // FHA measures the base loan, not the total (HUD 4155.2, second-hand): 541,287 of 2026.
    Purchase fha("fha", "600000");
    CHECK(fha.base_loan("541287").figures().available());
    CHECK(fha.base_loan("541287").figures().loan > money("541287"));
    CHECK(only(fha.base_loan("541288")).limit == money("541287"));
    // On a day after the last table its limits go on: they are never lower (12 USC 1717(b)(2), from
    // memory).
    large.place.loan_limit_area = LimitArea::baseline;
    large.as_of = date("2027-01-01");
    CHECK(only(large.base_loan("900000")).limit == money("832750"));
}

TEST_CASE("Limits go by the day of the quote, not by the closing") {
    // FHFA: 806,500 in 2025, 832,750 in 2026. ML 2024-21 and 2025-23: 524,225 and 541,287.
    struct Row {
        const char* program;
        const char* as_of;
        const char* most;
    };
    for (const Row& row : {
             Row{"conventional", "2025-12-31", "806500"},
             Row{"conventional", "2026-01-01", "832750"},
             Row{"fha", "2025-12-31", "524225"},
             Row{"fha", "2026-01-01", "541287"},
         }) {
        CAPTURE(row.program, row.as_of);
        Purchase home(row.program, "1200000");
        home.as_of = date(row.as_of);
        home.closing = date("2026-06-01");
        CHECK(home.base_loan(row.most).figures().available());
        home.scenario.down.amount -= Money::dollars(1);
        CHECK(why_not(home.figures()) == std::vector{Barred::loan_over_limit});
    }
}

TEST_CASE("Refused figures are left without a schedule, so that nobody takes them for an answer") {
    const LoanFigures f = Purchase("conventional").down_percent("1").figures();
    REQUIRE_FALSE(f.available());
    CHECK(f.schedule.months() == 0);
    CHECK(f.monthly == Monthly{});
    CHECK(f.insurance.months() == 0);
}
