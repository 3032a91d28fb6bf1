// Promises of the answers, over selections generated from a fixed seed on the shipped example.
#include <shown.hpp>

#include <random>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/compare.hpp>
#include <quoin/answers/month_by_month.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/shown.hpp>
#include <quoin/home/rules.hpp>
#include <quoin/render/adds.hpp>
#include <quoin/render/compare.hpp>
#include <quoin/render/month_by_month.hpp>
#include <quoin/render/quote.hpp>
#include <quoin/render/shown.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// Homes that obey the rules: a plan and lot that fit, and picks added one by one.
class Homes {
  public:
    explicit Homes(std::uint64_t seed) : random_(seed) {}

    Inquiry next() {
        Inquiry inquiry = six_programs().inquiry;
        Selection& selection = inquiry.selection;
        selection = {};
        selection.plan = below(book().plans.size());
        selection.elevation = below(at(book().plans, selection.plan).elevations.size());
        do {
            selection.lot = below(book().lots.size());
        } while (!allows(at(book().lots, selection.lot).plans, selection.plan));
        for (int tries = below(40); tries > 0; --tries) {
            const Change change = with_pick(book(), selection, any_pick());
            if (change.blocked.empty()) selection = change.selection;
        }
        return inquiry;
    }
    Pick any_pick() {
        Pick pick;
        pick.option = below(book().options.size());
        const Option& option = at(book().options, pick.option);
        if (option.kind == OptionKind::levels) pick.level = below(option.levels.size());
        if (option.kind == OptionKind::choice) pick.choice = below(option.choices.size());
        if (option.kind == OptionKind::allowance) pick.spend = Money::dollars(below(6000));
        return pick;
    }
    int below(std::size_t end) { return static_cast<int>(random_() % end); }
    static const PriceBook& book() { return six_programs().desk.book; }

  private:
    std::mt19937_64 random_;
};

const Monthly& of(const Added& added) { return added.monthly; }

std::vector<Money> figures_of(const LoanFigures& f) {
    return {f.price,
            f.loan,
            f.monthly.total(),
            f.first_year.total(),
            f.cash.needed(),
            f.cash.to_close(),
            f.paid_in_five_years(),
            f.paid_over_loan()};
}

} // namespace

TEST_CASE("Stacked figures sum to the whole difference, by part, cash and years") {
    Homes homes(1);
    int summed = 0;
    for (int i = 0; i < 60; ++i) {
        const Inquiry inquiry = homes.next();
        const Sitting sitting(six_programs().desk, inquiry);
        const AddsAnswer answer = adds(sitting, {Pick{0, -1, -1, {}, {}, false}});
        for (std::size_t s = 0; s < answer.scenarios.size(); ++s) {
            bool complete = true;
            Monthly sum;
            Money cash;
            Money five;
            Money life;
            Money price;
            for (const AddsStep& step : answer.stacked) {
                const Added& added = step.by_scenario[s];
                complete = complete && added.available();
                sum = sum - (Monthly{} - of(added));
                cash += added.cash;
                five += added.in_five_years;
                life += added.over_loan;
                price += step.price;
            }
            // A loan limit or the like may bar a step; there is no sum then.
            if (!complete || !answer.whole.by_scenario[s].available()) continue;
            ++summed;
            REQUIRE(sum == answer.whole.by_scenario[s].monthly);
            REQUIRE(cash == answer.whole.by_scenario[s].cash);
            REQUIRE(five == answer.whole.by_scenario[s].in_five_years);
            REQUIRE(life == answer.whole.by_scenario[s].over_loan);
            REQUIRE(price == answer.whole.price);
        }
    }
    CHECK(summed > 200);
}

TEST_CASE("What an option adds is the difference of two quotes computed apart") {
    Homes homes(2);
    for (int i = 0; i < 60; ++i) {
        Inquiry inquiry = homes.next();
        const Pick pick = homes.any_pick();
        if (inquiry.selection.find(pick.option) != nullptr) continue;
        const Sitting before(six_programs().desk, inquiry);
        const AddsItem item = adds(before, {pick}).items.front();
        if (item.standing != Standing::offered) continue;
        Inquiry changed = inquiry;
        changed.selection = with_pick(Homes::book(), inquiry.selection, pick).selection;
        const QuoteAnswer was = quote(before);
        const QuoteAnswer now = quote(Sitting(six_programs().desk, changed));
        REQUIRE(item.price == now.contract_price - was.contract_price);
        for (std::size_t s = 0; s < item.by_scenario.size(); ++s) {
            REQUIRE(item.by_scenario[s].per_month ==
                    now.scenarios[s].monthly.total() - was.scenarios[s].monthly.total());
            REQUIRE(item.by_scenario[s].over_loan ==
                    now.scenarios[s].paid_over_loan - was.scenarios[s].paid_over_loan);
        }
    }
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
        const Change back = without_option(Homes::book(), there.selection, pick.option);
        REQUIRE(back.selection.picks == inquiry.selection.picks);
        const Sitting sitting(six_programs().desk, inquiry);
        const auto before = sitting.figures(price_home(Homes::book(), inquiry.selection));
        const auto after = sitting.figures(price_home(Homes::book(), back.selection));
        for (std::size_t s = 0; s < before.size(); ++s) {
            REQUIRE(figures_of(before[s]) == figures_of(after[s]));
        }
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

TEST_CASE("JSON out, in and out again is the same text") {
    const Sitting sitting = six_programs().sitting();
    for (const std::string& text :
         {json_text_of(quote(sitting)), json_text_of(adds(sitting, {})),
          json_text_of(compare(sitting)), json_text_of(shown(sitting).value()),
          json_text_of(month_by_month(sitting, 3, Money::dollars(100)))}) {
        REQUIRE(write_json(json(text).root) + "\n" == text);
    }
}

TEST_CASE("What must stand beside a payment stands in every rendering of one") {
    const Sitting sitting = six_programs().sitting();
    for (const std::string& text :
         {text_of(quote(sitting)), text_of(adds(sitting, {}), false), text_of(compare(sitting)),
          text_of(month_by_month(sitting, 3, std::nullopt)), json_text_of(quote(sitting)),
          json_text_of(adds(sitting, {})), json_text_of(compare(sitting)),
          json_text_of(month_by_month(sitting, 3, std::nullopt))}) {
        CAPTURE(text.substr(0, 60));
        for (const char* words :
             {"not a Loan Estimate", "not an approval", "not an offer to lend", "licensed loan",
              "You may choose any lender", "6.606", "24 November 2026", "samples", "APR"}) {
            const bool in_json = text.front() == '{' && std::string(words) == "APR";
            CHECK(text.find(in_json ? "\"apr\"" : words) != std::string::npos);
        }
    }
}

TEST_CASE("Income, debts and cash on hand are in no rendering") {
    Inquiry inquiry = six_programs().inquiry;
    inquiry.monthly_income = Money::cents(7'654'321);
    inquiry.monthly_debts = Money::cents(8'765'432);
    inquiry.cash = Money::cents(9'876'543);
    inquiry.household = 17;
    const Sitting sitting(six_programs().desk, inquiry);
    const std::string all = text_of(quote(sitting)) + json_text_of(quote(sitting)) +
                            text_of(adds(sitting, {}), true) + json_text_of(adds(sitting, {})) +
                            text_of(compare(sitting)) + json_text_of(compare(sitting)) +
                            json_text_of(shown(sitting).value());
    for (const char* amount :
         {"76,543.21", "76543.21", "87,654.32", "87654.32", "98,765.43", "98765.43"}) {
        CAPTURE(amount);
        CHECK(all.find(amount) == std::string::npos);
    }
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
    CHECK(added.monthly.mortgage_insurance > Money{});
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
            ScenarioRules rules = sitting.rules()[s];
            rules.scenario = &scenario;
            const LoanFigures f = loan_figures(rules, home, {});
            if (!f.available()) continue;
            CAPTURE(scenario.name, dollars, f.base_loan);
            CHECK(f.cash.needed() <= scenario.down.amount);
            scenario.down = {
                DownPayment::By::amount, {}, f.price - f.base_loan + Money::dollars(1)};
            CHECK(loan_figures(rules, home, {}).cash.needed() > Money::dollars(dollars));
        }
    }
}
