// Prices of a home: each kind of option, packages, incentives, deposits.
#include <shown.hpp>

#include <quoin/home/priced_home.hpp>
#include <quoin/home/rules.hpp>

#include "support/files.hpp"
#include "support/told.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const char* const book_text = R"({
  "format": "quoin/pricebook/1",
  "community": {"name": "Test", "builder": "Nobody", "place": "here"},
  "version": "1", "effective": "2026-01-01", "expires": "2026-12-31",
  "areas": [{"id": "inside", "name": "Inside"}],
  "stages": [{"id": "permit", "name": "Permit"}, {"id": "frame", "name": "Framing"}],
  "plans": [
    {"id": "small", "name": "Small", "base_price": "200000", "bedrooms": 2, "bathrooms": 1,
      "square_feet": 1000,
     "measures": {"floor": "317.5"}, "elevations": [{"id": "a", "name": "A", "price": "0"}]},
    {"id": "large", "name": "Large", "base_price": "300000", "bedrooms": 4, "bathrooms": 2,
      "square_feet": 2000,
     "measures": {"floor": "500"},
     "elevations": [{"id": "a", "name": "A", "price": "0"}, {"id": "b", "name": "B",
      "price": "4500"}]}],
  "lots": [
    {"id": "flat", "premium": "0", "status": "free", "grade": "level",
      "measures": {"rear_ft": "20"}},
    {"id": "slope", "premium": "8000", "status": "free", "grade": "walk-out", "plans": ["large"],
     "measures": {"rear_ft": "40"}}],
  "options": [
    {"id": "wood", "name": "Wood", "area": "inside", "price": "3.33", "unit": "sq ft",
      "quantity": {"from_plan": "floor"}},
    {"id": "top", "name": "Top", "area": "inside", "included_level": {"large": "stone",
      "*": "plain"},
     "levels": [{"id": "plain", "name": "Plain", "price": "0"},
                {"id": "stone", "name": "Stone", "price": {"small": "2000", "large": "2600"}},
                {"id": "rare", "name": "Rare", "price": {"small": "5000", "large": "6100"}}]},
    {"id": "lights", "name": "Lights", "area": "inside", "price": "110", "quantity": {"min": 2,
      "max": 10, "step": 2, "usual": 4}},
    {"id": "color", "name": "Color", "area": "inside", "choices": [{"id": "white",
      "name": "White"}, {"id": "gray", "name": "Gray"}]},
    {"id": "lamps", "name": "Lamps", "area": "inside", "allowance": "900"},
    {"id": "no-lawn", "name": "No lawn", "area": "inside", "price": "-1500"},
    {"id": "door", "name": "Door", "area": "inside", "price": "7000", "structural": true,
      "cutoff": "permit",
     "only": {"grades": ["walk-out"]}},
    {"id": "deck", "name": "Deck", "area": "inside", "price": "9000", "structural": true,
      "requires": [["door", "top:rare"]],
     "only": {"lot_at_least": {"rear_ft": "30"}}},
    {"id": "gas", "name": "Gas", "area": "inside", "price": "4000", "excludes": ["stove"],
      "only": {"plans": ["large"]}},
    {"id": "stove", "name": "Stove", "area": "inside", "price": "2500", "one_of": "heat"},
    {"id": "pump", "name": "Pump", "area": "inside", "price": "6500", "one_of": "heat",
      "only": {"elevations": ["b"], "lots": ["slope"]}},
    {"id": "set", "name": "Set", "area": "inside", "price": {"small": "2300", "large": "700"},
      "parts": ["top:stone", "lights"]}
  ],
  "incentives": [
    {"id": "flat", "name": "Flat", "amount": "3000", "uses": ["price", "options", "closing costs"]},
    {"id": "share", "name": "Share", "percent": "1.5", "of": "base price", "uses": ["price"]}],
  "deposits": {"earnest": {"percent": "1"}, "options": {"structural_percent": "50",
      "finish_percent": "20"}}
})";

const PriceBook& book() {
    static const PriceBook parsed = [] {
        Findings findings;
        PriceBook read = read_price_book(json(book_text), nullptr, findings);
        if (!findings.none()) throw Refused(std::move(findings));
        return read;
    }();
    return parsed;
}

Index<Option> option(const char* id) { return index_of(book().options, id).value(); }

Pick pick(const char* id, const char* level = nullptr) {
    Pick made;
    made.option = option(id);
    if (level != nullptr) made.level = index_of(at(book().options, made.option).levels, level);
    return made;
}

Selection on(const char* plan, const char* lot, std::vector<Pick> picks) {
    Selection selection;
    selection.plan = index_of(book().plans, plan).value();
    selection.lot = index_of(book().lots, lot).value();
    selection.picks = std::move(picks);
    return selection;
}

Money options_of(const Selection& selection) { return price_home(book(), selection).options; }

Barrier first_barrier(const Selection& selection) {
    const auto found = conflicts(book(), selection);
    REQUIRE_FALSE(found.empty());
    return found.front().barrier;
}

std::string first_words(const Selection& selection) {
    const auto found = conflicts(book(), selection);
    return found.empty() ? "" : told(why_not(book(), found.front()));
}

} // namespace

TEST_CASE("A quantity from the plan times the unit price, half a cent away from zero") {
    CHECK(options_of(on("small", "flat", {pick("wood")})) ==
          money("1057.28")); // 317.5 x 3.33 = 1057.275
    CHECK(options_of(on("large", "flat", {pick("wood")})) == money("1665.00"));
}

TEST_CASE("A level is charged as the difference to what the plan includes, never below nothing") {
    CHECK(options_of(on("small", "flat", {pick("top", "stone")})) == money("2000"));
    CHECK(options_of(on("small", "flat", {pick("top", "rare")})) == money("5000"));
    CHECK(options_of(on("large", "flat", {pick("top", "rare")})) == money("3500"));
    CHECK(options_of(on("large", "flat", {pick("top", "stone")})) == Money{});
    CHECK(options_of(on("large", "flat", {pick("top", "plain")})) == Money{});
}

TEST_CASE("Counts, choices, allowances and credits") {
    Pick lights = pick("lights");
    CHECK(options_of(on("small", "flat", {lights})) == money("440")); // the usual four
    lights.quantity = decimal("6");
    CHECK(options_of(on("small", "flat", {lights})) == money("660"));
    CHECK(at(book().options, option("lights")).quantity.allows(decimal("6")));
    CHECK_FALSE(at(book().options, option("lights")).quantity.allows(decimal("5")));
    CHECK_FALSE(at(book().options, option("lights")).quantity.allows(decimal("12")));
    CHECK(options_of(on("small", "flat", {pick("color")})) == Money{});
    Pick lamps = pick("lamps");
    lamps.spend = money("1250.50");
    CHECK(options_of(on("small", "flat", {lamps})) == money("350.50"));
    lamps.spend = money("400"); // under the allowance: nothing is paid back
    CHECK(options_of(on("small", "flat", {lamps})) == Money{});
    CHECK(options_of(on("small", "flat", {pick("no-lawn")})) == money("-1500"));
}

TEST_CASE("A package replaces its parts, a better level is charged against the package's") {
    const Pick set = pick("set");
    CHECK(options_of(on("small", "flat", {set})) == money("2300"));
    CHECK(options_of(on("small", "flat", {pick("top", "stone"), pick("lights"), set})) ==
          money("2300"));
    CHECK(options_of(on("small", "flat", {set, pick("top", "rare")})) ==
          money("5300")); // + 5000 - 2000
    const PricedHome home = price_home(book(), on("small", "flat", {pick("lights"), set}));
    CHECK(home.lines[3].kind == LineKind::in_package);
}

TEST_CASE("Lines sum to the contract price, elevation and lot are on their own lines") {
    Selection selection = on("large", "slope", {pick("door"), pick("wood")});
    selection.elevation = Index<Elevation>(1);
    const PricedHome home = price_home(book(), selection);
    CHECK(home.base_price == money("300000"));
    CHECK(home.elevation == money("4500"));
    CHECK(home.lot_premium == money("8000"));
    CHECK(home.contract_price == money("321165"));
    check(home);
}

TEST_CASE("A priced home that breaks a promise is found out") {
    Selection selection = on("large", "slope", {pick("door"), pick("wood")});
    selection.incentives = {{Index<Incentive>(0), IncentiveUse::options, money("1000")},
                            {Index<Incentive>(0), IncentiveUse::closing_costs, std::nullopt}};
    const PricedHome home = price_home(book(), selection);
    REQUIRE(home.given.size() == 2);
    const Money cent = Money::cents(1);
    const auto broken = [&](auto damage) {
        PricedHome damaged = home;
        damage(damaged);
        CHECK_THROWS_AS(check(damaged), Broken);
    };
    broken([&](PricedHome& h) { h.contract_price += cent; });
    broken([&](PricedHome& h) { h.lines[3].amount += cent; });
    broken([&](PricedHome& h) { h.options += cent; });
    broken([&](PricedHome& h) { h.incentives += cent; });
    broken([&](PricedHome& h) { h.lines[3].kind = LineKind::choice; });
    broken([&](PricedHome& h) { h.lines[3].kind = LineKind::incentive; });
    broken([&](PricedHome& h) { h.given[1].amount = -cent; });
    broken([&](PricedHome& h) { h.given[1].use = IncentiveUse::price; });
    PricedHome damaged = home;
    damaged.contract_price += cent;
    CHECK_THROWS_WITH(check(damaged), "the lines of a priced home sum to its contract price: " +
                                          home.contract_price.text() + " is not " +
                                          damaged.contract_price.text());
}

TEST_CASE("Deposits: one percent at contract, half of structural and a fifth of finish options") {
    const PricedHome home = price_home(book(), on("large", "slope", {pick("door"), pick("wood")}));
    CHECK(home.earnest_deposit == money("3166.65"));
    CHECK(home.option_deposit == money("3833.00")); // 3500 + 333
}

TEST_CASE("An incentive is used once, and towards options no further than they cost") {
    Selection selection = on("small", "flat", {pick("top", "stone")});
    selection.incentives = {{Index<Incentive>(0), IncentiveUse::options, std::nullopt}};
    CHECK(price_home(book(), selection).contract_price == money("200000"));
    selection.incentives = {{Index<Incentive>(0), IncentiveUse::price, std::nullopt}};
    CHECK(price_home(book(), selection).contract_price == money("199000"));
    selection.incentives = {{Index<Incentive>(0), IncentiveUse::closing_costs, std::nullopt},
                            {Index<Incentive>(0), IncentiveUse::price, std::nullopt}};
    PricedHome home = price_home(book(), selection);
    CHECK(home.credited() == money("3000"));
    CHECK(home.contract_price == money("202000"));
    selection.incentives = {{Index<Incentive>(0), IncentiveUse::closing_costs, money("1000")},
                            {Index<Incentive>(0), IncentiveUse::price, std::nullopt}};
    home = price_home(book(), selection);
    CHECK(home.credited() == money("1000"));
    CHECK(home.incentives == money("2000"));
    selection.incentives = {{Index<Incentive>(1), IncentiveUse::price, std::nullopt}};
    CHECK(price_home(book(), selection).incentives == money("3000")); // 1.5% of the base price
}

TEST_CASE("Off the price incentives take no more than there is") {
    PriceBook rich = book();
    rich.incentives[0].amount = money("900000");
    rich.incentives[0].uses = {IncentiveUse::price, IncentiveUse::options};
    Selection selection = on("small", "flat", {pick("stove")});
    for (const IncentiveUse first : {IncentiveUse::price, IncentiveUse::options}) {
        const IncentiveUse then =
            first == IncentiveUse::price ? IncentiveUse::options : IncentiveUse::price;
        selection.incentives = {{Index<Incentive>(0), first, std::nullopt},
                                {Index<Incentive>(0), then, std::nullopt}};
        const PricedHome home = price_home(rich, selection);
        CHECK(home.contract_price == Money{});
        CHECK(home.given_to(IncentiveUse::options) <= home.options);
    }
}

TEST_CASE("Each rule bars what it should") {
    CHECK(first_barrier(on("small", "flat", {pick("gas")})) == Barrier::not_on_plan);
    Selection pump = on("large", "slope", {pick("pump")});
    CHECK(first_words(pump).starts_with("only on elevation "));
    pump.elevation = Index<Elevation>(1);
    CHECK(conflicts(book(), pump).empty());
    pump.lot = index_of(book().lots, "flat").value();
    CHECK(first_words(pump).starts_with("only on lot "));
    CHECK(first_words(on("large", "flat", {pick("door")})).ends_with(" lots"));
    CHECK(first_words(on("large", "flat", {pick("deck")})).starts_with("needs a lot whose "));
    Selection late = on("large", "slope", {pick("door")});
    late.stage = Index<Stage>{};
    CHECK(first_barrier(late) == Barrier::past_cutoff);
    late.picks.front().agreed = true;
    CHECK(conflicts(book(), late).empty());
    CHECK(first_barrier(on("large", "slope", {pick("deck")})) == Barrier::needs);
    CHECK(conflicts(book(), on("large", "slope", {pick("deck"), pick("door")})).empty());
    CHECK(conflicts(book(), on("large", "slope", {pick("deck"), pick("top", "rare")})).empty());
    CHECK(first_barrier(on("large", "slope", {pick("deck"), pick("top", "stone")})) ==
          Barrier::needs);
    CHECK(first_barrier(on("large", "flat", {pick("stove"), pick("gas")})) == Barrier::excludes);
    Selection heat = on("large", "slope", {pick("stove"), pick("pump")});
    heat.elevation = Index<Elevation>(1);
    CHECK(first_barrier(heat) == Barrier::one_of);
}

TEST_CASE(
    "Adding brings what is needed and takes out what is excluded, removing takes what needed it") {
    const Selection bare = on("large", "slope", {});
    const Change deck = with_pick(book(), bare, pick("deck"));
    REQUIRE(deck.blocked.empty());
    CHECK(deck.also_added == std::vector{option("door")});
    CHECK(deck.selection.picks.size() == 2);
    const Change without = without_option(book(), deck.selection, option("door"));
    CHECK(without.also_removed == std::vector{option("deck")});
    CHECK(without.selection.picks.empty());

    const Change gas = with_pick(book(), on("large", "slope", {pick("stove")}), pick("gas"));
    CHECK(gas.also_removed == std::vector{option("stove")});
    // On the flat lot neither the door nor the setback can be had.
    const Change blocked = with_pick(book(), on("large", "flat", {}), pick("deck"));
    REQUIRE_FALSE(blocked.blocked.empty());
    CHECK(blocked.blocked.front().limit.limit == Limit::lot_at_least);
}
