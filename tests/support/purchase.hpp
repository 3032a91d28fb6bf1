// One home bought under one scenario: published programs on a bare place and a plain rate sheet,
// all of which a test may change before it asks for the figures.
#pragma once

#include <string>

#include <quoin/lending/reading.hpp>
#include <quoin/loan/loan_figures.hpp>

#include "files.hpp"
#include "findings.hpp"

namespace quoin::test {

/// Nothing but a homeowner's premium, so that what a test adds is all there is.
inline const char* const bare_place_text = R"({
  "format": "quoin/place/1", "id": "bare", "name": "Bare", "status": "sample", "source": "invented",
  "loan_limit_area": "baseline", "rural_eligible": true,
  "property_tax": {"assessed_percent": "100", "levies": []},
  "insurance": {"dwelling_percent": "80",
    "homeowner": {"status": "sample", "source": "invented", "value": "per thousand",
                  "dimensions": [], "rows": [{"value": "3"}]}},
  "escrow": {"cushion_months": 0, "prepaid_insurance_months": 12}
})";

/// Three rungs for each program at 30 years and 60 days, and insurance by LTV.
inline const char* const plain_sheet_text = R"({
  "format": "quoin/rates/1", "id": "plain", "date": "2026-01-01", "good_through": "2027-12-31",
  "status": "sample", "lender": {"name": "Nobody", "license": "none"},
  "ladders": [
    {"program": "conventional", "months": 360, "lock_days": 60, "rungs": [
      {"rate": "6.000", "points": "1.500"}, {"rate": "6.250", "points": "0.250"},
      {"rate": "6.500", "points": "-1.000"}]},
    {"program": "fha", "months": 360, "lock_days": 60, "rungs": [
      {"rate": "6.000", "points": "1.000"}, {"rate": "6.250", "points": "0"}]},
    {"program": "va", "months": 360, "lock_days": 60, "rungs": [
      {"rate": "6.000", "points": "1.000"}, {"rate": "6.250", "points": "0"}]},
    {"program": "usda", "months": 360, "lock_days": 60, "rungs": [
      {"rate": "6.000", "points": "1.000"}, {"rate": "6.250", "points": "0"}]}],
  "mortgage_insurance": [
    {"status": "sample", "source": "invented", "value": "percent", "dimensions": ["ltv"],
     "rows": [{"ltv": "> 80, <= 85", "value": "0.30"}, {"ltv": "> 85, <= 90", "value": "0.48"},
              {"ltv": "> 90, <= 95", "value": "0.66"}, {"ltv": "> 95, <= 97", "value": "0.84"}]}],
  "single_premium": [
    {"status": "sample", "source": "invented", "value": "percent", "dimensions": ["ltv"],
     "rows": [{"ltv": "> 80, <= 85", "value": "1.05"}, {"ltv": "> 85, <= 90", "value": "1.62"},
              {"ltv": "> 90, <= 95", "value": "2.38"}, {"ltv": "> 95, <= 97", "value": "3.1"}]}]
})";

class Purchase {
  public:
    explicit Purchase(const char* program_id, const char* price = "400000") {
        const auto& programs = six_programs().desk.lending.programs;
        program = at(programs, index_of(programs, program_id).value());
        Findings findings;
        place = read_place(json(bare_place_text), findings);
        sheet = read_rate_sheet(json(plain_sheet_text), findings);
        if (!findings.none()) throw Refused(std::move(findings));
        scenario.program = program_id;
        scenario.name = program_id;
        scenario.score = 740;
        scenario.rate = {RateChoice::By::quoted, Points{}, rate("6.5")};
        home.contract_price = money(price);
    }

    [[nodiscard]] ScenarioRules rules() const {
        return rules_for(scenario, program, sheet, place, as_of, closing);
    }
    [[nodiscard]] LoanFigures figures() const { return loan_figures(rules(), home, facts); }

    Purchase& down_percent(const char* percent) {
        scenario.down = {DownPayment::By::percent, Percent(decimal(percent)), {}};
        return *this;
    }
    Purchase& down(const char* amount) {
        scenario.down = {DownPayment::By::amount, {}, money(amount)};
        return *this;
    }
    Purchase& base_loan(const char* amount) {
        scenario.down = {DownPayment::By::amount, {}, home.contract_price - money(amount)};
        return *this;
    }
    Purchase& cash(Money amount) {
        scenario.down = {DownPayment::By::cash, {}, amount};
        return *this;
    }
    Purchase& quoted(const char* percent, const char* points = "0") {
        scenario.rate = {RateChoice::By::quoted, Points(decimal(points)), rate(percent)};
        return *this;
    }
    Purchase& by_points(const char* points) {
        scenario.rate = {RateChoice::By::points, Points(decimal(points)), {}};
        return *this;
    }
    Purchase& by_note(const char* percent) {
        scenario.rate = {RateChoice::By::note, {}, rate(percent)};
        return *this;
    }
    /// An incentive of the builder's.
    Purchase& given(IncentiveUse use, const char* amount) {
        home.given.push_back({Index<Incentive>(0), use, money(amount)});
        return *this;
    }
    Purchase& years(int count) {
        scenario.term = Months::years(count);
        return *this;
    }
    Purchase& appraised(const char* amount) {
        facts.appraised_value = money(amount);
        return *this;
    }

    LoanProgram program;
    RateSheet sheet;
    Place place;
    Scenario scenario;
    PricedHome home;
    PurchaseFacts facts;
    Date as_of = date("2026-11-24");
    Date closing = date("2027-05-14");
};

inline std::vector<Barred> why_not(const LoanFigures& figures) {
    std::vector<Barred> reasons;
    for (const Refusal& refusal : figures.refusals) reasons.push_back(refusal.why);
    return reasons;
}

} // namespace quoin::test
