// Packages, allowances and levels where they meet: what a package brings is paid once, and what is
// better or more than it brings is paid on top.
#include <shown.hpp>

#include <quoin/home/priced_home.hpp>

#include "support/files.hpp"
#include "support/small_book.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// The small book with a package of lights, lamps and a count by the plan besides its own.
const PriceBook& book() {
    static const ReadBook read = [] {
        ReadBook made = patched_book(
            "[" + op_add("/options/-", R"({"id": "bright", "name": "Bright", "area": "inside",
                "price": "1300", "structural": true,
                "parts": ["lights", "lamps", "wood", "color", "no-lawn", "deck:pine"]})") +
            "]");
        if (!made.findings.none()) throw Refused(std::move(made.findings));
        return made;
    }();
    return read.book;
}

struct Want {
    const char* id;
    const char* level = "";
    const char* quantity = "";
    const char* spend = "";
};

Selection picked(Index<Plan> plan, const std::vector<Want>& wants) {
    Selection selection;
    selection.plan = plan;
    for (const Want& want : wants) {
        Pick pick;
        pick.option = index_of(book().options, want.id).value();
        const Option& option = quoin::at(book().options, pick.option);
        if (*want.level != '\0') pick.level = index_of(option.levels, want.level);
        if (*want.quantity != '\0') pick.quantity = decimal(want.quantity);
        if (*want.spend != '\0') pick.spend = money(want.spend);
        if (option.kind == OptionKind::choice) pick.choice = Index<Choice>{};
        selection.picks.push_back(pick);
    }
    return selection;
}

Money options(Index<Plan> plan, const std::vector<Want>& wants) {
    return price_home(book(), picked(plan, wants)).options;
}

LineKind last_kind(Index<Plan> plan, const std::vector<Want>& wants) {
    return price_home(book(), picked(plan, wants)).lines.back().kind;
}

constexpr Index<Plan> small_plan(0);
constexpr Index<Plan> large_plan(1);

} // namespace

TEST_CASE("Parts of a package cost nothing beside it, before it or after it") {
    CHECK(options(small_plan, {{"warm"}}) == money("4000"));
    for (const auto& wants : {std::vector<Want>{{"warm"}, {"flue"}, {"stove"}},
                              std::vector<Want>{{"flue"}, {"stove"}, {"warm"}},
                              std::vector<Want>{{"flue"}, {"warm"}, {"stove"}},
                              std::vector<Want>{{"warm"}, {"top", "stone"}},
                              std::vector<Want>{{"warm"}, {"top", "plain"}}}) {
        CHECK(options(small_plan, wants) == money("4000"));
    }
    CHECK(last_kind(small_plan, {{"warm"}, {"stove"}}) == LineKind::in_package);
    CHECK(options(small_plan, {{"flue"}, {"stove"}}) == money("3300")); // without it
}

TEST_CASE("A better level than the package's costs the difference to the package's") {
    // Large plan: stone is included, rare lists 3,500 above it.
    CHECK(options(large_plan, {{"warm"}, {"top", "rare"}}) == money("6500")); // 3,000 + 3,500
    CHECK(options(large_plan, {{"top", "rare"}}) == money("3500"));
    CHECK(options(small_plan, {{"bright"}, {"deck", "cedar"}}) ==
          money("4300")); // + 12,000 - 9,000
    CHECK(options(small_plan, {{"bright"}, {"deck", "pine"}}) == money("1300"));
    CHECK(last_kind(small_plan, {{"bright"}, {"deck", "cedar"}}) == LineKind::option);
}

TEST_CASE("A package brings the usual count and the plan's measure, more is charged") {
    CHECK(options(small_plan, {{"bright"}, {"lights"}}) == money("1300"));           // the usual 4
    CHECK(options(small_plan, {{"bright"}, {"lights", "", "2"}}) == money("1300"));  // fewer
    CHECK(options(small_plan, {{"bright"}, {"lights", "", "10"}}) == money("1960")); // 6 x 110 more
    CHECK(options(small_plan, {{"bright"}, {"wood"}}) == money("1300"));
    const PricedHome home =
        price_home(book(), picked(small_plan, {{"bright"}, {"lights", "", "10"}}));
    CHECK(home.lines.back().quantity == decimal("6"));
    CHECK(home.lines.back().unit_price == money("110"));
}

TEST_CASE("A package brings an allowance's budget, what is spent above it is charged") {
    CHECK(options(small_plan, {{"bright"}, {"lamps", "", "", "900"}}) == money("1300"));
    CHECK(options(small_plan, {{"bright"}, {"lamps", "", "", "500"}}) == money("1300"));
    CHECK(options(small_plan, {{"bright"}, {"lamps", "", "", "2150.25"}}) == money("2550.25"));
    CHECK(options(large_plan, {{"bright"}, {"lamps", "", "", "2150.25"}}) == money("2250.25"));
}

TEST_CASE("A credit or a choice inside a package is settled by the package") {
    CHECK(options(small_plan, {{"bright"}, {"no-lawn"}}) == money("1300"));
    CHECK(last_kind(small_plan, {{"bright"}, {"no-lawn"}}) == LineKind::in_package);
    CHECK(options(small_plan, {{"bright"}, {"color"}}) == money("1300"));
    CHECK(last_kind(small_plan, {{"bright"}, {"color"}}) == LineKind::choice);
}

TEST_CASE("The option deposit: a package goes by its own kind, never below nothing") {
    // bright is structural: half of 1,300; warm is not: a fifth of 4,000.
    CHECK(price_home(book(), picked(small_plan, {{"bright"}})).option_deposit == money("650"));
    CHECK(price_home(book(), picked(small_plan, {{"warm"}})).option_deposit == money("800"));
    CHECK(price_home(book(), picked(small_plan, {{"no-lawn"}})).option_deposit == Money{});
    // A credit comes off what finish options are due: a fifth of 2,500 - 1,500.
    CHECK(price_home(book(), picked(small_plan, {{"no-lawn"}, {"stove"}})).option_deposit ==
          money("200"));
}

TEST_CASE("Allowances: nothing said is nothing spent above, and nothing is paid back") {
    CHECK(options(small_plan, {{"lamps"}}) == Money{});
    CHECK(options(small_plan, {{"lamps", "", "", "0"}}) == Money{});
    CHECK(options(small_plan, {{"lamps", "", "", "899.99"}}) == Money{});
    CHECK(options(small_plan, {{"lamps", "", "", "900.01"}}) == money("0.01"));
    CHECK(options(large_plan, {{"lamps", "", "", "1200.01"}}) == money("0.01"));
}

TEST_CASE("Levels against what the plan includes") {
    struct Row {
        Index<Plan> plan;
        const char* level;
        const char* charge;
    };
    for (const Row& row : {
             Row{small_plan, "plain", "0"}, Row{small_plan, "stone", "2000"},
             Row{large_plan, "plain", "0"}, // under the included level: nothing back
             Row{large_plan, "stone", "0"}, Row{large_plan, "rare", "3500"}, // 6,100 - 2,600
         }) {
        CAPTURE(row.plan.position(), row.level);
        CHECK(options(row.plan, {{"top", row.level}}) == money(row.charge));
    }
    CHECK(options(small_plan, {{"deck", "pine"}}) == money("9000")); // none included: all of it
    const Option& top = quoin::at(book().options, index_of(book().options, "top").value());
    CHECK(unit_price(top, Index<Level>(2), small_plan) ==
          std::nullopt); // rare is not offered on it
    CHECK(unit_price(top, {}, small_plan) == std::nullopt);
}

TEST_CASE("Half cents of quantity x unit price go away from zero, credits too") {
    const ReadBook odd = patched_book("[" + op_replace("/options/0/price", "\"0.03\"") + "," +
                                      op_replace("/plans/0/measures/floor", "\"0.5\"") + "]");
    REQUIRE(odd.findings.none());
    Selection selection = picked(small_plan, {{"wood"}});
    CHECK(price_home(odd.book, selection).options == money("0.02")); // 0.015
    const ReadBook credit = patched_book("[" + op_replace("/options/0/price", "\"-0.03\"") + "," +
                                         op_replace("/plans/0/measures/floor", "\"0.5\"") + "]");
    CHECK(price_home(credit.book, selection).options == money("-0.02"));
}

TEST_CASE("Percent incentives by their base, uses added up where they go") {
    const auto priced = [](const char* of, std::vector<IncentivePick> used) {
        const ReadBook read = patched_book(
            "[" + op_replace("/incentives/1/of", "\"" + std::string(of) + "\"") + "," +
            op_replace("/incentives/1/uses", R"(["price", "options", "points"])") + "]");
        Selection selection = picked(large_plan, {{"stove"}, {"flue"}, {"no-lawn"}}); // 1,800
        selection.elevation = Index<Elevation>(1);                                    // 4,500
        selection.lot = Index<Lot>(1);                                                // 8,000
        selection.incentives = std::move(used);
        return price_home(read.book, selection);
    };
    const std::vector<IncentivePick> to_price = {{Index<Incentive>(1), IncentiveUse::price, {}}};
    CHECK(priced("base price", to_price).incentives == money("4500"));        // 1.5% of 300,000
    CHECK(priced("options", to_price).incentives == money("27"));             // of 1,800
    CHECK(priced("contract price", to_price).incentives == money("4714.50")); // of 314,300
    CHECK(priced("contract price", to_price).contract_price == money("309585.50"));
    // In parts: 1,000 to points, the rest of 4,500 to options, which hold only 1,800 of it.
    const PricedHome parts =
        priced("base price", {{Index<Incentive>(1), IncentiveUse::points, money("1000")},
                              {Index<Incentive>(1), IncentiveUse::options, {}},
                              {Index<Incentive>(0), IncentiveUse::closing_costs, {}},
                              {Index<Incentive>(0), IncentiveUse::price, {}}});
    CHECK(parts.given_to(IncentiveUse::points) == money("1000"));
    CHECK(parts.incentives == money("1800"));
    CHECK(parts.given_to(IncentiveUse::closing_costs) == money("3000"));
    CHECK(parts.given_to(IncentiveUse::buydown) == Money{});
    CHECK(parts.contract_price == money("312500")); // nothing is left of the first for the price
    check(parts);
    // A part larger than the whole is the whole.
    CHECK(priced("options", {{Index<Incentive>(1), IncentiveUse::price, money("99999")}})
              .incentives == money("27"));
    CHECK(priced("base price", {{Index<Incentive>(0), IncentiveUse::buydown, {}}}).credited() ==
          money("3000"));
    CHECK(parts.given == std::vector<IncentiveGiven>{
                             {Index<Incentive>(1), IncentiveUse::points, money("1000")},
                             {Index<Incentive>(1), IncentiveUse::options, money("1800")},
                             {Index<Incentive>(0), IncentiveUse::closing_costs, money("3000")},
                             {Index<Incentive>(0), IncentiveUse::price, Money{}}});
}
