// What each option adds: standings with their reasons, what comes along, options asked for by name.
#include <shown.hpp>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/home/rules.hpp>
#include <quoin/inquiry/asking.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/words/problem_words.hpp>

#include "prose.hpp"
#include "support/files.hpp"
#include "support/told.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Pick pick_of(const PriceBook& book, const char* text) {
    Findings findings;
    const auto pick = asked_option(book, text, findings);
    if (!pick) throw Refused(std::move(findings));
    return *pick;
}

AddsItem item_for(const apps::Loaded& loaded, const char* text) {
    return adds(loaded.sitting(), {pick_of(loaded.desk.book, text)}).items.front();
}

void choose(apps::Loaded& loaded, const char* text) {
    loaded.inquiry.selection.picks.push_back(pick_of(loaded.desk.book, text));
}

void leave_out(apps::Loaded& loaded, const char* text) {
    const Index<Option> option = pick_of(loaded.desk.book, text).option;
    std::erase_if(loaded.inquiry.selection.picks,
                  [&](const Pick& pick) { return pick.option == option; });
}

} // namespace

TEST_CASE("Where an option stands: offered, chosen, in a package, not to be had") {
    const auto loaded = small();
    CHECK(item_for(*loaded, "stove").standing == Standing::offered);
    CHECK(item_for(*loaded, "stove").price == money("2600"));
    CHECK(item_for(*loaded, "stove").wish == 1);
    CHECK(item_for(*loaded, "heater").wish == 0);

    const AddsItem flue = item_for(*loaded, "flue");
    CHECK(flue.standing == Standing::chosen);
    CHECK(flue.price == money("-900"));
    CHECK(flue.work.structure);
    CHECK(flue.cutoff == "Framing");

    const AddsItem door = item_for(*loaded, "walk-out");
    CHECK(door.standing == Standing::barred);
    CHECK(told(door.why_not) == "only on walk-out lots");
    CHECK(door.by_scenario.empty());

    choose(*loaded, "warm");
    const AddsItem stove = item_for(*loaded, "stove");
    CHECK(stove.standing == Standing::held);
    CHECK(stove.package == "Warm package");
    CHECK(stove.by_scenario.empty());
}

namespace {

/// What each loan comes to with an option and without it, as two quotes tell.
void check_against_quotes(const apps::Loaded& with, const apps::Loaded& without,
                          const AddsInHome& has) {
    const QuoteAnswer one = quote(with.sitting());
    const QuoteAnswer other = quote(without.sitting());
    CHECK(has.price == one.contract_price - other.contract_price);
    REQUIRE(has.by_scenario.size() == one.scenarios.size());
    for (std::size_t i = 0; i < one.scenarios.size(); ++i) {
        const ScenarioAnswer& a = one.scenarios[i];
        const ScenarioAnswer& b = other.scenarios[i];
        const Added& added = has.by_scenario[i];
        CAPTURE(a.terms.name);
        CHECK(added.per_month == a.monthly.total() - b.monthly.total());
        CHECK(added.cash == a.cash.needed() - b.cash.needed());
        CHECK(added.to_close == a.cash.to_close() - b.cash.to_close());
        CHECK(added.over_loan == a.paid_over_loan - b.paid_over_loan);
    }
}

} // namespace

TEST_CASE("What is in the home already adds the home with it, less the home without") {
    struct Row {
        const char* option;
        const char* also;   ///< chosen first
        const char* leaves; ///< another option that goes with it
        const char* heading;
    };
    for (const Row& row : {
             Row{"flue", nullptr, nullptr,
                 "Insulated flue * (flue), in your home already: it adds"},
             Row{"floor:oak", nullptr, nullptr, "Floor: Oak (floor:oak), in your home already"},
             Row{"shelves=3", nullptr, nullptr, "Shelves (shelves), in your home already"},
             Row{"warm", "warm", nullptr, "Warm package (warm), in your home already"},
             Row{"flue", "stove", "stove", "counted with Wood stove, not available without it"},
         }) {
        CAPTURE(row.option);
        const auto with = small();
        if (row.also != nullptr) choose(*with, row.also);
        const auto without = small();
        if (row.also != nullptr && row.leaves == nullptr) choose(*without, row.also);
        leave_out(*without, row.option);
        const AddsAnswer answer = adds(with->sitting(), {pick_of(with->desk.book, row.option)});
        const AddsItem& item = answer.items.front();
        REQUIRE(item.in_home);
        check_against_quotes(*with, *without, *item.in_home);
        CHECK(item.in_home->price == Money{} - item.price); // taking it out is the way back
        CHECK(unwrapped(text_of(answer, true)).find(row.heading) != std::string::npos);
    }
    CHECK_FALSE(item_for(*small(), "stove").in_home);
}

TEST_CASE("What an option needs comes with it, and what it excludes goes") {
    const auto loaded = small();
    leave_out(*loaded, "flue");
    const AddsItem stove = item_for(*loaded, "stove");
    CHECK(stove.standing == Standing::offered);
    CHECK(stove.along == std::vector<std::string>{"Insulated flue"});
    CHECK(stove.price == money("3500"));

    choose(*loaded, "flue");
    choose(*loaded, "stove");
    const AddsItem heater = item_for(*loaded, "heater");
    CHECK(heater.instead == std::vector<std::string>{"Wood stove"});
    CHECK(heater.price == money("1800") - money("2600"));

    const AddsItem flue = item_for(*loaded, "flue"); // taking it out takes the stove along
    CHECK(flue.standing == Standing::chosen);
    CHECK(flue.along == std::vector<std::string>{"Wood stove"});
    CHECK(flue.price == money("-3500"));
}

TEST_CASE("A need past its cutoff bars the option that has it, unless it was agreed") {
    const auto loaded = small();
    loaded->inquiry.selection.stage = index_of(loaded->desk.book.stages, "frame");
    CHECK(item_for(*loaded, "stove").standing == Standing::barred); // the flue was not agreed
    for (Pick& pick : loaded->inquiry.selection.picks) pick.agreed = true;
    CHECK(item_for(*loaded, "stove").standing == Standing::offered);
    leave_out(*loaded, "flue");
    const AddsItem stove = item_for(*loaded, "stove");
    CHECK(stove.standing == Standing::barred);
    CHECK(told(stove.why_not) == "needs Insulated flue");
}

TEST_CASE("A quantity, a level or an amount to spend is asked for by name") {
    struct Row {
        const char* text;
        const char* price;
    };
    const auto loaded = small(); // with oak floor, 3 shelves and no lamps
    for (const Row& row : {
             Row{"shelves=8", "300.00"},    // 8 x 60 in place of 3 x 60
             Row{"shelves=3", "-180.00"},   // chosen in just this form: taken out
             Row{"floor:pine", "-2040.00"}, // 480 sq ft x 4.25, given up
             Row{"floor:oak", "-2040.00"},  // chosen: taken out
             Row{"lamps=300", "0.00"},      // what is included
             Row{"lamps=250", "0.00"},      // no refund under it
             Row{"lamps=450.50", "150.50"}, // the overage
         }) {
        CAPTURE(row.text);
        CHECK(item_for(*loaded, row.text).price == money(row.price));
    }
}

TEST_CASE("What is asked for and is not in the price book is said, with what is near") {
    struct Row {
        const char* text;
        const char* id;
        const char* near; ///< in the advice
    };
    const auto loaded = small();
    for (const Row& row : {
             Row{"stov", "option-unknown", "stove"},
             Row{"floor:ock", "option-unknown", "floor:oak"},
             Row{"floor", "option-unknown", "floor:pine"}, // its level is not named
             Row{"stove:big", "option-unknown", "stove"},
             Row{"shelves=9", "option-number", ""},
             Row{"shelves=0.5", "option-number", ""},
             Row{"shelves=x", "option-number", ""},
             Row{"stove=2", "option-number", ""}, // there is one
             Row{"lamps=-1", "option-number", ""},
             Row{"lamps=1.005", "option-number", ""},
             Row{"", "option-unknown", ""},
         }) {
        CAPTURE(row.text);
        Findings findings;
        CHECK_FALSE(asked_option(loaded->desk.book, row.text, findings).has_value());
        REQUIRE(findings.problems().size() == 1);
        CHECK(name_of(findings.problems().front().id) == row.id);
        CHECK(words_of(findings.problems().front(), catalogue_in(Language::english))
                  .advice.find(row.near) != std::string::npos);
    }
}

TEST_CASE("Without a name every option that costs something is there, in tour order") {
    const auto loaded = small();
    std::vector<std::string> ids;
    for (const AddsItem& item : adds(loaded->sitting(), {}).items) ids.push_back(item.id);
    // The choice is at no cost, the pine floor is included, the lamps' allowance is not touched.
    CHECK(ids == std::vector<std::string>{"walk-out", "floor:oak", "stove", "flue", "heater",
                                          "shelves", "warm"});
}

TEST_CASE("The rule of thumb is the payment on a thousand dollars at the scenario's own terms") {
    // 12 payments at 6.25%: 1000 i / (1 - (1 + i)^-12), i = 0.0625 / 12, is 86.18 (worked apart)
    const auto loaded = small();
    const AddsAnswer answer = adds(loaded->sitting(), {});
    CHECK(answer.scenarios.at(0).per_thousand == money("86.18"));
    CHECK(answer.scenarios.at(0).terms.rate == rate("6.25"));
    CHECK(answer.scenarios.at(1).per_thousand == money("86.07")); // at 6%
}

TEST_CASE("Crossing 80% of value starts mortgage insurance, and the answer says so") {
    const auto loaded = small();
    // At 22% down of 103,120 with an amount that stays: the stove lifts the LTV over 80%.
    loaded->inquiry.scenarios.at(0).down = {DownPayment::By::amount, {}, money("20900")};
    const AddsItem stove = item_for(*loaded, "stove");
    const Added& added = stove.by_scenario.at(0);
    REQUIRE(added.available());
    CHECK(added.ltv_before <= Ltv(decimal("80")));
    CHECK(added.ltv_after > Ltv(decimal("80")));
    REQUIRE(added.jumps.size() == 1);
    CHECK(added.jumps.front().lookup == Lookup::mi_factor);
    CHECK(added.jumps.front().before.value.empty());
    CHECK(added.jumps.front().after.value == "0.6");
    CHECK(added.jumps.front().after.band == "ltv > 80, <= 95");
    CHECK(added.monthly[MonthPart::mortgage_insurance] > Money{});
}

TEST_CASE("An option that makes a scenario impossible says which and why, and has no figures") {
    const auto loaded = small();
    // 4.9% down by an amount: at the limit of 95% now, over it with the package.
    loaded->inquiry.scenarios.at(0).down = {DownPayment::By::amount, {}, money("5200")};
    const AddsItem warm = item_for(*loaded, "warm");
    REQUIRE(warm.by_scenario.size() == 2);
    CHECK_FALSE(warm.by_scenario.at(0).available());
    CHECK(warm.by_scenario.at(0).refusals.front().why == Barred::ltv_over_maximum);
    CHECK(warm.by_scenario.at(0).per_month == Money{});
    CHECK(warm.by_scenario.at(1).available());
    const std::string text = text_of(adds(loaded->sitting(), {}), false);
    CHECK(text.find("Ten percent down is not available: the base") != std::string::npos);
}
