// Promises of the answers, over homes generated from a fixed seed on the shipped example.
#include <shown.hpp>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/cash.hpp>
#include <quoin/answers/month_by_month.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/inquiry/asking.hpp>
#include <quoin/render/answers.hpp>

#include "homes.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// What a home's figures add up to, so that sums and differences can be told apart by name.
struct Sums {
    Monthly monthly;
    Money cash;
    Money to_close;
    Money five_years;
    Money whole_loan;
    Money price;

    friend bool operator==(const Sums&, const Sums&) = default;
};

void add(Sums& sums, const Added& added, Money price) {
    sums.monthly = sums.monthly - (Monthly{} - added.monthly);
    sums.cash += added.cash;
    sums.to_close += added.to_close;
    sums.five_years += added.in_five_years;
    sums.whole_loan += added.over_loan;
    sums.price += price;
}

Sums sums_of(const Added& added, Money price) {
    Sums sums;
    add(sums, added, price);
    return sums;
}

/// The same, taken from two quotes instead.
Sums between(const QuoteAnswer& was, const QuoteAnswer& now, std::size_t scenario) {
    const ScenarioAnswer& a = was.scenarios[scenario];
    const ScenarioAnswer& b = now.scenarios[scenario];
    return {b.monthly - a.monthly,
            b.cash.needed() - a.cash.needed(),
            b.cash.to_close() - a.cash.to_close(),
            b.paid_in_five_years - a.paid_in_five_years,
            b.paid_over_loan - a.paid_over_loan,
            now.contract_price - was.contract_price};
}

QuoteAnswer quote_of(const Inquiry& inquiry) {
    return quote(Sitting(six_programs().desk, inquiry));
}

} // namespace

TEST_CASE("Stacked figures sum to the whole difference, by part, cash and years") {
    Homes homes(1);
    int summed = 0;
    for (int i = 0; i < 60; ++i) {
        const Inquiry inquiry = homes.next();
        const AddsAnswer answer = adds(Sitting(six_programs().desk, inquiry), {homes.any_pick()});
        for (std::size_t s = 0; s < answer.scenarios.size(); ++s) {
            bool complete = answer.whole.by_scenario[s].available();
            Sums sums;
            for (const AddsStep& step : answer.stacked) {
                complete = complete && step.by_scenario[s].available();
                add(sums, step.by_scenario[s], step.price);
            }
            // A loan limit or the like may bar a step; there is no sum then.
            if (!complete) continue;
            ++summed;
            REQUIRE(sums == sums_of(answer.whole.by_scenario[s], answer.whole.price));
            REQUIRE(sums.monthly.total() == answer.whole.by_scenario[s].per_month);
        }
    }
    CHECK(summed > 200);
}

TEST_CASE("All picks together are the difference of the home to the one without options") {
    Homes homes(5);
    for (int i = 0; i < 40; ++i) {
        const Inquiry inquiry = homes.next();
        Inquiry bare = inquiry;
        bare.selection.picks.clear();
        const QuoteAnswer was = quote_of(bare);
        const QuoteAnswer now = quote_of(inquiry);
        const AddsAnswer answer = adds(Sitting(six_programs().desk, inquiry), {homes.any_pick()});
        for (std::size_t s = 0; s < answer.scenarios.size(); ++s) {
            const Added& whole = answer.whole.by_scenario[s];
            REQUIRE(whole.available() ==
                    (was.scenarios[s].available() && now.scenarios[s].available()));
            if (!whole.available()) continue;
            REQUIRE(sums_of(whole, answer.whole.price) == between(was, now, s));
        }
    }
}

TEST_CASE("Each stacked figure is the difference of two quotes, in the buyer's order") {
    const Inquiry& inquiry = six_programs().inquiry;
    const AddsAnswer answer = adds(six_programs().sitting(), {Pick{}});
    Inquiry so_far = inquiry;
    so_far.selection.picks.clear();
    QuoteAnswer was = quote_of(so_far);
    std::size_t step = 0;
    for (const Pick& pick : inquiry.selection.picks) {
        so_far.selection.picks.push_back(pick);
        if (at(Homes::book().options, pick.option).kind == OptionKind::choice) continue;
        const QuoteAnswer now = quote_of(so_far);
        REQUIRE(step < answer.stacked.size());
        CAPTURE(answer.stacked[step].id);
        CHECK(answer.stacked[step].id == name_of(Homes::book(), {pick.option, pick.level}));
        CHECK(sums_of(answer.stacked[step].by_scenario[0], answer.stacked[step].price) ==
              between(was, now, 0));
        was = now;
        ++step;
    }
    CHECK(step == answer.stacked.size());
}

TEST_CASE("What an option adds is the difference of two quotes computed apart") {
    Homes homes(2);
    int compared = 0;
    for (int i = 0; i < 90; ++i) {
        const Inquiry inquiry = homes.next();
        const Pick pick = homes.any_pick();
        const AddsItem item = adds(Sitting(six_programs().desk, inquiry), {pick}).items.front();
        if (item.standing != Standing::offered && item.standing != Standing::chosen) continue;
        Inquiry changed = inquiry;
        changed.selection =
            item.standing == Standing::offered
                ? with_pick(Homes::book(), inquiry.selection, pick).selection
                : without_option(Homes::book(), inquiry.selection, pick.option).selection;
        const QuoteAnswer was = quote_of(inquiry);
        const QuoteAnswer now = quote_of(changed);
        REQUIRE(item.price == now.contract_price - was.contract_price);
        for (std::size_t s = 0; s < item.by_scenario.size(); ++s) {
            const Added& added = item.by_scenario[s];
            if (!added.available()) continue;
            ++compared;
            REQUIRE(sums_of(added, item.price) == between(was, now, s));
            REQUIRE(added.per_month == added.monthly.total());
        }
    }
    CHECK(compared > 100);
}

TEST_CASE("Adding an option and taking it out gives back the same quote") {
    Homes homes(3);
    int tried = 0;
    for (int i = 0; i < 200; ++i) {
        const Inquiry inquiry = homes.next();
        const Pick pick = homes.any_pick();
        const Change there = with_pick(Homes::book(), inquiry.selection, pick);
        const bool plain = there.blocked.empty() && there.also_removed.empty() &&
                           there.also_added.empty() &&
                           inquiry.selection.find(pick.option) == nullptr;
        if (!plain) continue;
        ++tried;
        Inquiry back = inquiry;
        back.selection = without_option(Homes::book(), there.selection, pick.option).selection;
        REQUIRE(back.selection.picks == inquiry.selection.picks);
        REQUIRE(json_text_of(quote_of(back)) == json_text_of(quote_of(inquiry)));
    }
    CHECK(tried > 50);
}

TEST_CASE("A price never goes down when an option with a positive price joins the others") {
    Homes homes(4);
    int tried = 0;
    for (int i = 0; i < 300; ++i) {
        const Inquiry inquiry = homes.next();
        const Pick pick = homes.any_pick();
        const Option& option = at(Homes::book().options, pick.option);
        const auto unit = unit_price(option, pick.level, inquiry.selection.plan);
        const Change there = with_pick(Homes::book(), inquiry.selection, pick);
        // A package may cost less than the parts it takes the place of.
        const bool joins = there.blocked.empty() && there.also_removed.empty() && unit &&
                           *unit > Money{} && option.kind != OptionKind::package &&
                           inquiry.selection.find(pick.option) == nullptr;
        if (!joins) continue;
        ++tried;
        REQUIRE(price_home(Homes::book(), there.selection).contract_price >=
                price_home(Homes::book(), inquiry.selection).contract_price);
    }
    CHECK(tried > 50);
}

TEST_CASE("Figures jump where a rule's line is crossed, and the reason is said") {
    const auto loaded = apps::load_inquiry(
        QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/right-under-eighty.json",
        QUOIN_SOURCE_DIR "/rates");
    Findings none;
    const auto pick = asked_option(loaded->desk.book, "windows:triple", none);
    REQUIRE(pick.has_value());
    const AddsAnswer answer = adds(loaded->sitting(), {*pick});
    const Added& added = answer.items.front().by_scenario.front();
    REQUIRE_FALSE(added.jumps.empty());
    CHECK(added.jumps.front().lookup == Lookup::mi_factor);
    CHECK(added.jumps.front().before.value.empty());
    CHECK(added.monthly[MonthPart::mortgage_insurance] > Money{});
    CHECK(text_of(answer, true).find("mortgage insurance starts") != std::string::npos);
}

TEST_CASE("Down payment solved from cash is the largest the cash allows, to the dollar") {
    Inquiry inquiry = six_programs().inquiry;
    for (Scenario& scenario : inquiry.scenarios) scenario.down.by = DownPayment::By::cash;
    const Sitting sitting(six_programs().desk, inquiry);
    const PricedHome home = price_home(Homes::book(), inquiry.selection);
    for (std::int64_t dollars = 40'000; dollars <= 160'000; dollars += 8'000) {
        for (std::size_t s = 0; s < inquiry.scenarios.size(); ++s) {
            Scenario scenario = inquiry.scenarios[s];
            scenario.down.amount = Money::dollars(dollars);
            const ScenarioRules& rules = sitting.rules()[s];
            const LoanFigures f = loan_figures(rules.with(scenario), home, {});
            if (!f.available()) continue;
            CAPTURE(scenario.name, dollars, f.base_loan);
            CHECK(f.cash.needed() <= scenario.down.amount);
            scenario.down = {
                DownPayment::By::amount, {}, f.price - f.base_loan + Money::dollars(1)};
            CHECK(loan_figures(rules.with(scenario), home, {}).cash.needed() >
                  Money::dollars(dollars));
        }
    }
}
