// The published rules of the loan programs, each with a worked case on a home of a round price.
//
// The rate sheet, place and price book are invented; what is checked is the program's own
// arithmetic.
#include <shown.hpp>

#include <quoin/loan/loan_figures.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// A home of a given price under one program, with the shipped rules.
class Purchase {
  public:
    explicit Purchase(const char* program, const char* price = "400000") {
        scenario.program = program;
        scenario.name = program;
        scenario.score = 740;
        scenario.rate = {RateChoice::By::quoted, Points{}, rate("6.5")};
        home.contract_price = money(price);
    }
    [[nodiscard]] LoanFigures figures() const {
        const Lending& lending = six_programs().desk.lending;
        const auto program = index_of(lending.programs, scenario.program).value();
        const ScenarioRules rules =
            rules_for(scenario, at(lending.programs, program), lending.sheets.front(),
                      lending.places.front(), as_of, closing);
        return loan_figures(rules, home, facts);
    }
    Purchase& down_percent(const char* percent) {
        scenario.down = {DownPayment::By::percent, Percent(decimal(percent)), {}};
        return *this;
    }
    Purchase& down(const char* amount) {
        scenario.down = {DownPayment::By::amount, {}, money(amount)};
        return *this;
    }

    Scenario scenario;
    PricedHome home;
    PurchaseFacts facts;
    Date as_of = date("2026-11-24");
    Date closing = date("2027-05-14");
};

bool barred(const LoanFigures& f, Barred why) {
    for (const Refusal& refusal : f.refusals) {
        if (refusal.why == why) return true;
    }
    return false;
}

} // namespace

TEST_CASE("FHA: 3.5% down, 1.75% financed, 0.55% a year for the term") {
    // 12 USC 1709(b)(9): 3.5% minimum investment; HUD 4155.2: whole dollars; ML 2023-05: premiums.
    const LoanFigures f = Purchase("fha").down_percent("3.5").figures();
    REQUIRE(f.available());
    CHECK(f.base_loan == Money::dollars(386'000));
    CHECK(f.upfront_fee == Money::dollars(6'755)); // 1.75% of the base loan
    CHECK(f.loan == Money::dollars(392'755));
    CHECK(f.annual_percent == Percent(decimal("0.55")));
    CHECK(f.insurance.months() == 360);
    CHECK(barred(Purchase("fha").down_percent("3.4").figures(), Barred::ltv_over_maximum));
}

TEST_CASE("FHA: the upfront premium's cents are paid in cash, the loan stays in whole dollars") {
    // HUD 4155.2: mortgage amount rounded down; all financed but for up to 49.99.
    const LoanFigures f = Purchase("fha", "397123.45").down_percent("3.5").figures();
    CHECK(f.base_loan == Money::dollars(383'224)); // 96.5% is 383,224.12
    CHECK(f.upfront_fee == money("6706.42"));
    CHECK(f.financed_fee == Money::dollars(6'706));
    CHECK(f.cash[CashPart::upfront_fee] == money("0.42"));
}

TEST_CASE("FHA annual premium by LTV, loan and term, ML 2023-05") {
    struct Row {
        const char* price;
        const char* down;
        int months;
        const char* percent;
        int paid;
    };
    for (const Row& row : {
             Row{"400000", "10", 360, "0.50", 132},   // <= 90%: eleven years
             Row{"400000", "9.99", 360, "0.50", 360}, // > 90%: the term
             Row{"400000", "5", 360, "0.50", 360},
             Row{"400000", "4.99", 360, "0.55", 360}, // > 95%
             Row{"400000", "10", 180, "0.15", 132},   // <= 15 years
             Row{"400000", "9.99", 180, "0.40", 180},
         }) {
        CAPTURE(row.down, row.months);
        Purchase c("fha", row.price);
        c.scenario.term = Months(row.months);
        const LoanFigures f = c.down_percent(row.down).figures();
        CHECK(f.annual_percent == Percent(decimal(row.percent)));
        CHECK(f.insurance.months() == row.paid);
    }
}

TEST_CASE("FHA: the score decides between 96.5 and 90%") {
    // 4000.1, second-hand: 580 and over 96.5%; 500 to 579 90%; under 500 none.
    Purchase c("fha");
    c.scenario.score = 580;
    CHECK(c.down_percent("3.5").figures().available());
    c.scenario.score = 579;
    CHECK(barred(c.figures(), Barred::ltv_over_maximum));
    CHECK(c.down_percent("10").figures().available());
    c.scenario.score = 499;
    CHECK(barred(c.figures(), Barred::score_below_minimum));
    c.scenario.score.reset();
    CHECK(barred(c.figures(), Barred::score_needed));
}

TEST_CASE("FHA floors of 2025 and 2026 hold the base loan, not the total") {
    // ML 2024-21: 524,225; ML 2025-23: 541,287.
    Purchase c("fha", "600000");
    c.as_of = date("2026-11-24");
    CHECK(c.down("58713").figures().available());
    CHECK(barred(c.down("58712").figures(), Barred::loan_over_limit));
    c.as_of = date("2025-11-24");
    CHECK(c.down("75775").figures().available());
    CHECK(barred(c.down("75774").figures(), Barred::loan_over_limit));
}

TEST_CASE("VA funding fee by use and down payment, 38 USC 3729(b)(2)") {
    struct Row {
        EntitlementUse use;
        const char* down;
        const char* percent;
    };
    for (const Row& row : {
             Row{EntitlementUse::first, "0", "2.15"},
             Row{EntitlementUse::subsequent, "0", "3.30"},
             Row{EntitlementUse::first, "4.99", "2.15"},
             Row{EntitlementUse::first, "5", "1.50"},
             Row{EntitlementUse::subsequent, "5", "1.50"},
             Row{EntitlementUse::first, "9.99", "1.50"},
             Row{EntitlementUse::first, "10", "1.25"},
             Row{EntitlementUse::subsequent, "10", "1.25"},
             Row{EntitlementUse::exempt, "0", "0"},
         }) {
        CAPTURE(static_cast<int>(row.use), row.down);
        Purchase c("va");
        c.scenario.use = row.use;
        CHECK(c.down_percent(row.down).figures().upfront_percent == Percent(decimal(row.percent)));
    }
    // 400,000 with nothing down, first use: 8,600 financed.
    const LoanFigures f = Purchase("va").down_percent("0").figures();
    CHECK(f.loan == Money::dollars(408'600));
    CHECK(f.monthly[MonthPart::mortgage_insurance] == Money{});
}

TEST_CASE("VA funding fee before 7 April 2023, by the closing's date") {
    // The table of 1 January 2020 to 6 April 2023: 2.30 / 3.60 / 1.65 / 1.40.
    Purchase c("va");
    c.closing = date("2023-04-06");
    CHECK(c.down_percent("0").figures().upfront_percent == Percent(decimal("2.30")));
    c.closing = date("2023-04-07");
    CHECK(c.figures().upfront_percent == Percent(decimal("2.15")));
}

TEST_CASE("USDA: total = base / 0.99 in whole dollars, 0.35% a year for the term") {
    // Method of USDA's guarantee-fee form: 150,000 / 0.99 = 151,515, fee 1,515.15.
    const LoanFigures f = Purchase("usda", "150000").down_percent("0").figures();
    REQUIRE(f.available());
    CHECK(f.loan == Money::dollars(151'515));
    CHECK(f.upfront_fee == money("1515.15"));
    CHECK(f.cash[CashPart::upfront_fee] == money("0.15"));
    CHECK(f.insurance.months() == 360);
    // Average of the first year's balances x 0.35% / 12; what is averaged: 7 CFR 3555.
    Money sum;
    for (int month = 0; month < 12; ++month) sum += f.schedule.balance(month);
    const Money year = percent_of(part_of(sum, 12, Rounding::half_away), Percent(decimal("0.35")),
                                  Rounding::half_away);
    CHECK(std::abs((f.insurance.in_month(1) - part_of(year, 12, Rounding::half_away)).count()) <=
          1);
    CHECK(f.insurance.in_month(13) < f.insurance.in_month(1));
}

TEST_CASE("Conventional: no insurance at 80.00% of value, insurance above") {
    const LoanFigures at_eighty = Purchase("conventional").down_percent("20").figures();
    CHECK(at_eighty.ltv == Ltv(decimal("80")));
    CHECK(at_eighty.insurance.months() == 0);
    // Cut to two decimals, 80.0099% is still 80.00 (Fannie Mae B2-1.2-01, from memory).
    CHECK(Purchase("conventional").down("79961").figures().insurance.months() == 0);
    CHECK(Purchase("conventional").down("79960").figures().insurance.months() > 0);
}

TEST_CASE("Conventional: 97% at most, and the conforming limits of 2025 and 2026") {
    CHECK(Purchase("conventional").down_percent("3").figures().available());
    CHECK(barred(Purchase("conventional").down_percent("2.9").figures(), Barred::ltv_over_maximum));
    // FHFA: 806,500 for 2025, 832,750 for 2026.
    Purchase c("conventional", "1100000");
    CHECK(c.down("267250").figures().available());
    CHECK(barred(c.down("267249").figures(), Barred::loan_over_limit));
    c.as_of = date("2025-11-24");
    CHECK(barred(c.down("267250").figures(), Barred::loan_over_limit));
    CHECK(c.down("293500").figures().available());
}

TEST_CASE("Contributions of interested parties, Fannie Mae B3-4.1-02: 3, 6 and 9%") {
    struct Row {
        const char* down;
        const char* cap;
    };
    for (const Row& row : {Row{"9.99", "3"}, Row{"10", "6"}, Row{"24.99", "6"}, Row{"25", "9"}}) {
        CAPTURE(row.down);
        const LoanFigures f = Purchase("conventional").down_percent(row.down).figures();
        CHECK(f.contribution_cap == Percent(decimal(row.cap)));
    }
}

TEST_CASE("A low appraisal lowers the loan, and the buyer makes up the rest") {
    Purchase c("conventional");
    c.facts.appraised_value = Money::dollars(380'000);
    const LoanFigures f = c.down_percent("20").figures();
    CHECK(f.value == Money::dollars(380'000)); // 12 USC 4901(12): the lesser of price and appraisal
    CHECK(f.base_loan == Money::dollars(304'000));
    CHECK(f.cash[CashPart::down_payment] == Money::dollars(96'000));
    CHECK(f.ltv == Ltv(decimal("80")));
}

TEST_CASE("Everything that bars a loan is said, in its documented order") {
    Purchase c("conventional", "1100000");
    c.scenario.term = Months(300);
    c.scenario.score = 500;
    c.scenario.rate = {RateChoice::By::note, {}, rate("1")};
    c.down_percent("1");
    const auto whys = [&] {
        std::vector<Barred> list;
        for (const Refusal& refusal : c.figures().refusals) list.push_back(refusal.why);
        return list;
    };
    CHECK(whys() == std::vector{Barred::term_not_offered, Barred::score_below_minimum,
                                Barred::loan_over_limit, Barred::rate_not_offered,
                                Barred::mi_not_offered});
    c.scenario.term = Months(360);
    CHECK(whys() == std::vector{Barred::score_below_minimum, Barred::loan_over_limit,
                                Barred::rate_not_offered, Barred::mi_not_offered});
    c.scenario.score = 740;
    CHECK(whys() == std::vector{Barred::ltv_over_maximum, Barred::loan_over_limit,
                                Barred::rate_not_offered, Barred::mi_not_offered});
    c.down_percent("20");
    CHECK(whys() == std::vector{Barred::loan_over_limit, Barred::rate_not_offered});
    c.home.contract_price = Money::dollars(1'000'000);
    CHECK(whys() == std::vector{Barred::rate_not_offered});
    c.scenario.rate = {RateChoice::By::quoted, {}, rate("6.5")};
    CHECK(whys().empty());
}
