// Why a scenario cannot be had: each reason, with the amounts it names.
#include <shown.hpp>

#include <functional>

#include <quoin/answers/compare.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/render/words.hpp>

#include "prose.hpp"
#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// A copy of the example that a test may change: its desk, and one scenario of its inquiry.
struct Changed {
    Desk desk = six_programs().desk;
    Inquiry inquiry = six_programs().inquiry;

    explicit Changed(const char* program) {
        std::erase_if(inquiry.scenarios, [&](const Scenario& s) { return s.program != program; });
        inquiry.scenarios.resize(1);
        inquiry.selection.incentives.clear();
    }
    Scenario& scenario() { return inquiry.scenarios.front(); }
    Place& place() { return at(desk.lending.places, 0); }
    [[nodiscard]] ScenarioAnswer answer() const {
        return compare(Sitting(desk, inquiry)).scenarios.front();
    }
};

struct Row {
    const char* program;
    Barred why;
    std::function<void(Changed&)> change;
};

const std::vector<Row> rows = {
    {"conventional", Barred::term_not_offered, [](Changed& c) { c.scenario().term = Months(300); }},
    {"usda", Barred::place_not_eligible, [](Changed& c) { c.place().rural_eligible = false; }},
    {"conventional", Barred::score_needed, [](Changed& c) { c.scenario().score.reset(); }},
    {"conventional", Barred::score_below_minimum, [](Changed& c) { c.scenario().score = 619; }},
    {"fha", Barred::score_below_minimum, [](Changed& c) { c.scenario().score = 499; }},
    {"conventional", Barred::ltv_over_maximum,
     [](Changed& c) {
         c.scenario().down = {DownPayment::By::percent, Percent(decimal("2.9")), {}};
     }},
    {"fha", Barred::ltv_over_maximum,
     [](Changed& c) {
         c.scenario().down = {DownPayment::By::percent, Percent(decimal("3.4")), {}};
     }},
    {"fha", Barred::ltv_over_maximum, [](Changed& c) { c.scenario().score = 579; }}, // 90% only
    {"fha", Barred::loan_over_limit,
     [](Changed& c) {
         at(c.desk.book.plans, c.inquiry.selection.plan).base_price = money("520000");
     }},
    {"conventional", Barred::rate_not_offered,
     [](Changed& c) {
         c.scenario().rate = {RateChoice::By::note, {}, rate("1")};
     }},
    {"conventional", Barred::rate_not_offered, [](Changed& c) { c.scenario().lock_days = 720; }},
    {"conventional", Barred::mi_not_offered,
     [](Changed& c) {
         for (BandTable& table : c.desk.lending.sheets.front().mortgage_insurance) {
             table.bands.clear(), table.values.clear(), table.written.clear();
         }
     }},
    {"va", Barred::insurance_not_offered,
     [](Changed& c) {
         c.place().homeowner.bands.clear(), c.place().homeowner.values.clear();
         c.place().homeowner.written.clear();
     }},
    {"conventional", Barred::buydown_not_allowed,
     [](Changed& c) {
         c.scenario().rate = {RateChoice::By::quoted, {}, rate("1.5")};
         c.scenario().buydown = {Percent(decimal("2")), Percent(decimal("1"))};
     }},
    {"va", Barred::cash_short,
     [](Changed& c) {
         c.scenario().down = {DownPayment::By::cash, {}, money("1000")};
     }},
};

} // namespace

TEST_CASE("Each reason against a scenario comes first where it is the cause") {
    for (const Row& row : rows) {
        Changed changed(row.program);
        CAPTURE(row.program, name_of(row.why));
        REQUIRE(changed.answer().available());
        row.change(changed);
        const ScenarioAnswer answer = changed.answer();
        REQUIRE_FALSE(answer.refusals.empty()); // others may follow from it
        CHECK(name_of(answer.refusals.front().why) == name_of(row.why));
        CHECK_FALSE(words(answer.refusals.front()).empty());
        CHECK(answer.monthly == Monthly{});
    }
}

TEST_CASE("A score at its minimum, and a loan at its limit, are had") {
    Changed fha("fha");
    fha.scenario().score = 580;
    CHECK(fha.answer().available());
    Changed conventional("conventional");
    conventional.scenario().score = 620;
    CHECK(conventional.answer().available());
    conventional.scenario().down = {DownPayment::By::percent, Percent(decimal("3")), {}};
    CHECK(conventional.answer().available());

    // The FHA limit of the baseline area, 541,287 (2026), to the dollar.
    const Money price = fha.answer().price;
    Scenario& scenario = fha.scenario();
    at(fha.desk.book.plans, fha.inquiry.selection.plan).base_price += money("570000") - price;
    scenario.down = {DownPayment::By::amount, {}, money("570000") - money("541287")};
    CHECK(fha.answer().base_loan == money("541287"));
    CHECK(fha.answer().available());
    scenario.down.amount -= money("1");
    const ScenarioAnswer over = fha.answer();
    REQUIRE(over.refusals.size() == 1);
    CHECK(over.refusals.front().found == money("541288"));
    CHECK(over.refusals.front().limit == money("541287"));
    CHECK(words(over.refusals.front()).find("$1.00 more down") != std::string::npos);
}

TEST_CASE("The most a program lends is a share of the value, not of a higher price") {
    Changed changed("conventional");
    const Money price = changed.answer().price;
    changed.inquiry.facts.appraised_value = money("400000");
    changed.scenario().down = {DownPayment::By::amount, {}, price - money("388000")};
    CHECK(changed.answer().available()); // 97% of 400,000
    changed.scenario().down.amount -= money("1");
    const ScenarioAnswer over = changed.answer();
    REQUIRE(over.refusals.size() == 1);
    CHECK(over.refusals.front().limit == money("388000"));
}

TEST_CASE("Several reasons are all told, and the other scenarios keep their figures") {
    Changed changed("conventional");
    const Scenario sound = changed.scenario();
    changed.scenario().term = Months(300);
    changed.scenario().score = 500;
    changed.inquiry.scenarios.push_back(sound);
    changed.inquiry.scenarios.back().name = "sound";
    const CompareAnswer answer = compare(Sitting(changed.desk, changed.inquiry));
    CHECK(answer.scenarios.at(0).refusals.size() >= 2);
    CHECK(answer.scenarios.at(1).available());
    const std::string text = unwrapped(text_of(answer));
    CHECK(text.find("the program has no loans with this term") != std::string::npos);
    CHECK(text.find("the credit score is below the program's minimum") != std::string::npos);
}

TEST_CASE("Cash that is short names the cash there is and the least that is needed") {
    Changed changed("va");
    changed.scenario().down = {DownPayment::By::cash, {}, money("1000")};
    const Refusal refusal = changed.answer().refusals.front();
    CHECK(refusal.found == money("1000"));
    CHECK(refusal.limit > money("1000"));
    changed.scenario().down.amount = refusal.limit; // exactly the least there must be
    CHECK(changed.answer().available());
    CHECK(changed.answer().cash.needed() == refusal.limit);
}
