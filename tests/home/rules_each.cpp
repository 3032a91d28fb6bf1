// Each rule on options by itself: at its edge, in words, and what adding and removing does.
#include <shown.hpp>

#include <quoin/home/priced_home.hpp>
#include <quoin/home/rules.hpp>

#include "support/files.hpp"
#include "support/small_book.hpp"
#include "support/told.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Index<Option> option(const PriceBook& book, const char* id) {
    return index_of(book.options, id).value();
}

/// "top", "top:stone": a pick of the usual quantity.
Pick pick(const PriceBook& book, const std::string& name) {
    const std::size_t colon = name.find(':');
    Pick made;
    made.option = index_of(book.options, name.substr(0, colon)).value();
    if (colon != std::string::npos) {
        made.level = index_of(quoin::at(book.options, made.option).levels, name.substr(colon + 1));
        REQUIRE(made.level);
    }
    return made;
}

/// A home of the small book: plan, elevation and lot by index, and picks by name.
Selection home(const PriceBook& book, Index<Plan> plan, Index<Elevation> elevation, Index<Lot> lot,
               const std::vector<std::string>& names, std::optional<Index<Stage>> stage = {}) {
    Selection selection;
    selection.plan = plan;
    selection.elevation = elevation;
    selection.lot = lot;
    selection.stage = stage;
    for (const std::string& name : names) selection.picks.push_back(pick(book, name));
    return selection;
}

using RowWords = std::vector<std::string>;

/// Every conflict of a selection in words.
RowWords conflict_words(const PriceBook& book, const Selection& selection) {
    RowWords words;
    for (const Conflict& conflict : conflicts(book, selection)) {
        words.push_back(quoin::at(book.options, conflict.of.option).id + ": " +
                        told(why_not(book, conflict)));
    }
    return words;
}

RowWords names(const PriceBook& book, const std::vector<Index<Option>>& options) {
    RowWords ids;
    for (const Index<Option> index : options) ids.push_back(quoin::at(book.options, index).id);
    return ids;
}

RowWords picks(const PriceBook& book, const Selection& selection) {
    RowWords ids;
    for (const Pick& picked : selection.picks)
        ids.push_back(name_of(book, {picked.option, picked.level}));
    return ids;
}

constexpr Index<Plan> small_plan(0);
constexpr Index<Plan> large_plan(1);
constexpr Index<Elevation> plain(0);
constexpr Index<Elevation> stone(1);
constexpr Index<Lot> flat(0);  // level, rear 20 ft
constexpr Index<Lot> slope(1); // walk-out, rear 40 ft, width 70.5 ft
constexpr Index<Lot> garden(2);
constexpr Index<Stage> permit(0);
constexpr Index<Stage> framing(1);
constexpr Index<Stage> painting(2);

} // namespace

TEST_CASE("Each barrier in words, and the home where it is none") {
    const PriceBook& book = small_book();
    struct Row {
        Selection barred;
        const char* words;
        Selection fine;
    };
    const auto on = [&](Index<Plan> plan, Index<Elevation> elevation, Index<Lot> lot,
                        const RowWords& names) { return home(book, plan, elevation, lot, names); };
    for (const Row& row : {
             // No price for the plan, no measure of it, not among the plans.
             Row{on(large_plan, plain, flat, {"gas"}), "gas: not available on this plan",
                 on(small_plan, plain, flat, {"gas"})},
             Row{on(large_plan, plain, flat, {"rail"}), "rail: not available on this plan",
                 on(small_plan, plain, flat, {"rail"})},
             Row{on(small_plan, plain, flat, {"arch"}), "arch: not available on this plan",
                 on(large_plan, stone, flat, {"arch"})},
             Row{on(large_plan, plain, flat, {"arch"}), "arch: only on elevation Stone",
                 on(large_plan, stone, flat, {"arch"})},
             Row{on(large_plan, plain, garden, {"porch", "steps"}), "steps: only on lot 1 or 2",
                 on(large_plan, plain, slope, {"porch", "steps"})},
             Row{on(large_plan, plain, flat, {"door"}), "door: only on walk-out or daylight lots",
                 on(large_plan, plain, slope, {"door"})},
             Row{on(large_plan, plain, flat, {"porch"}),
                 "porch: needs a lot whose rear is 30 ft or more",
                 on(large_plan, plain, slope, {"porch"})},
             Row{on(large_plan, plain, slope, {"steps"}), "steps: needs deck:cedar or porch",
                 on(large_plan, plain, slope, {"deck:cedar", "steps"})},
             Row{on(large_plan, plain, slope, {"deck:pine", "steps"}),
                 "steps: needs deck:cedar or porch",
                 on(large_plan, plain, slope, {"porch", "steps"})},
             Row{on(small_plan, plain, flat, {"stove"}), "stove: needs flue",
                 on(small_plan, plain, flat, {"stove", "flue"})}, // the order does not matter
             Row{on(small_plan, plain, flat, {"flue", "stove", "gas"}),
                 "gas: does not go with stove", on(small_plan, plain, flat, {"flue", "gas"})},
             Row{on(small_plan, plain, flat, {"gas", "flue", "stove"}),
                 "stove: does not go with gas", on(small_plan, plain, flat, {"flue", "stove"})},
             Row{on(large_plan, plain, slope, {"deck:pine", "porch"}),
                 "porch: only one of its kind; deck is chosen",
                 on(large_plan, plain, slope, {"deck:pine"})},
         }) {
        CAPTURE(row.words);
        const RowWords words = conflict_words(book, row.barred);
        REQUIRE_FALSE(words.empty());
        CHECK(std::find(words.begin(), words.end(), row.words) != words.end());
        CHECK(conflict_words(book, row.fine).empty());
    }
    // On a lot without the measure, it is too small; on one to the very inch, it is not.
    CHECK(conflict_words(book, on(large_plan, plain, garden, {"porch"})) ==
          RowWords{"porch: needs a lot whose rear is 30 ft or more"});
    const ReadBook exact = patched_book(
        "[" + op_replace("/lots/0/measures", R"({"rear_ft": "30", "width_ft": "70"})") + "]");
    CHECK(conflict_words(exact.book, on(large_plan, plain, flat, {"porch"})).empty());
    const ReadBook narrow = patched_book(
        "[" + op_replace("/lots/0/measures", R"({"rear_ft": "30", "width_ft": "69.999"})") + "]");
    CHECK(conflict_words(narrow.book, on(large_plan, plain, flat, {"porch"})) ==
          RowWords{"porch: needs a lot whose width is 70 ft or more"});
}

TEST_CASE("A cutoff passes when its stage is reached, not before, what is agreed stays") {
    const PriceBook& book = small_book(); // flue until framing, deck until the permit
    struct Row {
        const char* name;
        std::optional<Index<Stage>> stage;
        bool passed;
    };
    for (const Row& row : {
             Row{"flue", {}, false},
             Row{"flue", permit, false},
             Row{"flue", framing, true},
             Row{"flue", painting, true},
             Row{"deck:pine", {}, false},
             Row{"deck:pine", permit, true},
             Row{"lights", painting, false}, // no cutoff
             Row{"wood", framing, false},
             Row{"wood", painting, true},
         }) {
        CAPTURE(row.name, row.passed);
        Selection late = home(book, small_plan, plain, flat, {row.name}, row.stage);
        REQUIRE(conflicts(book, late).empty() == !row.passed);
        if (!row.passed) continue;
        CHECK(conflicts(book, late).front().barrier == Barrier::past_cutoff);
        late.picks.front().agreed = true;
        CHECK(conflicts(book, late).empty());
        CHECK(with_pick(book, home(book, small_plan, plain, flat, {}, row.stage),
                        pick(book, row.name))
                  .blocked.size() == 1);
    }
    CHECK(conflict_words(book, home(book, small_plan, plain, flat, {"flue"}, framing)) ==
          RowWords{"flue: too late; it had to be chosen before Framing"});
}

TEST_CASE("All that bars an option is told, in the order of precedence") {
    const ReadBook read =
        patched_book("[" +
                     op_replace("/options/11/only",
                                R"({"plans": ["large"], "elevations": ["stone"], "lots": ["2"],
                             "grades": ["walk-out"], "lot_at_least": {"rear_ft": "30"}})") +
                     "," + op_add("/options/11/cutoff", "\"permit\"") + "," +
                     op_add("/options/11/requires", R"(["porch"])") + "]");
    REQUIRE(read.findings.none());
    CHECK(conflict_words(read.book, home(read.book, small_plan, plain, flat, {"arch"}, painting)) ==
          RowWords{"arch: not available on this plan", "arch: only on elevation Stone",
                   "arch: only on lot 2", "arch: only on walk-out lots",
                   "arch: needs a lot whose rear is 30 ft or more",
                   "arch: too late; it had to be chosen before Permit", "arch: needs porch"});
}

TEST_CASE("What counts as held: picks at a level or better, included levels, package parts") {
    const PriceBook& book = small_book();
    const auto held = [&](Index<Plan> plan, const RowWords& names, const char* wanted) {
        const Pick ref = pick(book, wanted);
        return holds(book, home(book, plan, plain, flat, names), {ref.option, ref.level});
    };
    CHECK_FALSE(held(small_plan, {}, "flue"));
    CHECK(held(small_plan, {"flue"}, "flue"));
    CHECK(held(small_plan, {"deck:cedar"}, "deck:pine"));
    CHECK_FALSE(held(small_plan, {"deck:pine"}, "deck:cedar"));
    CHECK(held(small_plan, {"deck:pine"}, "deck")); // any level
    CHECK(held(small_plan, {}, "top:plain"));       // included
    CHECK_FALSE(held(small_plan, {}, "top:stone"));
    CHECK(held(large_plan, {}, "top:stone"));
    CHECK_FALSE(held(large_plan, {}, "deck:pine")); // no level is included
    CHECK(held(small_plan, {"warm"}, "stove"));
    CHECK(held(small_plan, {"warm"}, "top:stone"));
    CHECK_FALSE(held(small_plan, {"warm"}, "top:rare"));
    // A package that brings what it needs lets stand what needs it.
    CHECK(conflicts(book, home(book, small_plan, plain, flat, {"warm", "stove"})).empty());
}

TEST_CASE("A package is held to the rules of what it brings") {
    const PriceBook& book = small_book();
    // The package brings the stove, which gas stands against.
    CHECK(conflict_words(book, home(book, small_plan, plain, flat, {"warm", "gas"})) ==
          RowWords{"gas: does not go with warm"});
    CHECK(conflict_words(book, home(book, small_plan, plain, flat, {"gas", "warm"})) ==
          RowWords{"warm: does not go with gas"});
    const Change gas =
        with_pick(book, home(book, small_plan, plain, flat, {"warm"}), pick(book, "gas"));
    REQUIRE(gas.blocked.empty());
    CHECK(names(book, gas.also_removed) == RowWords{"warm"});
    CHECK(picks(book, gas.selection) == RowWords{"gas"});
    // A part and its own package stand together; so do two packages that share a part.
    const ReadBook grouped = patched_book(
        "[" + op_add("/options/13/one_of", "\"heat\"") + "," +
        op_add("/options/12/one_of", "\"heat\"") + "," + op_remove("/options/12/excludes") + "," +
        op_add("/options/-", R"({"id": "warmer", "name": "Warmer", "area": "inside",
            "price": "4500", "parts": ["stove", "flue"]})") +
        "]");
    INFO(listing(grouped.findings));
    REQUIRE(grouped.findings.none());
    CHECK(conflicts(grouped.book, home(grouped.book, small_plan, plain, flat,
                                       {"flue", "stove", "warm", "warmer"}))
              .empty());
    CHECK(conflict_words(grouped.book,
                         home(grouped.book, small_plan, plain, flat, {"warm", "gas"})) ==
          RowWords{"gas: only one of its kind; warm is chosen"});
}

TEST_CASE("Adding brings needs before it, deepest first, the first way that can be had here") {
    const ReadBook read =
        patched_book("[" + op_add("/options/14/requires", R"([["arch", "lights"]])") + "]");
    REQUIRE(read.findings.none());
    const PriceBook& book = read.book;
    // The arch cannot be had on a small plan, so the flue brings lights.
    const Change small =
        with_pick(book, home(book, small_plan, plain, flat, {}), pick(book, "stove"));
    REQUIRE(small.blocked.empty());
    CHECK(names(book, small.also_added) == RowWords{"lights", "flue"});
    CHECK(picks(book, small.selection) == RowWords{"lights", "flue", "stove"});
    const Change large =
        with_pick(book, home(book, large_plan, stone, flat, {}), pick(book, "stove"));
    CHECK(names(book, large.also_added) == RowWords{"arch", "flue"});
    // What is there already is not brought again.
    const Change lit =
        with_pick(book, home(book, large_plan, stone, flat, {"lights"}), pick(book, "stove"));
    CHECK(names(book, lit.also_added) == RowWords{"flue"});
}

TEST_CASE("A need for a level brings the least that will do, or raises what is there") {
    const PriceBook& book = small_book();
    // On the flat lot the porch is no way out: the deck is, at its second level.
    const Change fresh =
        with_pick(book, home(book, small_plan, plain, flat, {}), pick(book, "steps"));
    REQUIRE(fresh.blocked.empty());
    CHECK(picks(book, fresh.selection) == RowWords{"deck:cedar", "steps"});
    const Change raised = with_pick(
        book, home(book, small_plan, plain, flat, {"deck:pine", "lights"}), pick(book, "steps"));
    REQUIRE(raised.blocked.empty());
    CHECK(picks(book, raised.selection) == RowWords{"deck:cedar", "lights", "steps"});
    // Late in the build nothing of it can be had any more.
    const Change late =
        with_pick(book, home(book, small_plan, plain, flat, {}, permit), pick(book, "steps"));
    REQUIRE(late.blocked.size() == 1);
    CHECK(told(why_not(book, late.blocked[0])) == "needs deck:cedar or porch");
}

TEST_CASE("Adding what is there already replaces it in its place") {
    const PriceBook& book = small_book();
    const Selection start = home(book, large_plan, plain, slope, {"deck:cedar", "lights", "steps"});
    const Change lower = with_pick(book, start, pick(book, "deck:pine"));
    // The steps need cedar: they go, and are said to go.
    REQUIRE(lower.blocked.empty());
    CHECK(picks(book, lower.selection) == RowWords{"deck:pine", "lights"});
    CHECK(names(book, lower.also_removed) == RowWords{"steps"});
    Pick many = pick(book, "lights");
    many.quantity = decimal("8");
    const Change more = with_pick(book, start, many);
    CHECK(picks(book, more.selection) == RowWords{"deck:cedar", "lights", "steps"});
    CHECK(more.selection.picks[1].quantity == decimal("8"));
}

TEST_CASE("One of a group takes the other's place, with what needed the other") {
    const ReadBook read =
        patched_book("[" + op_replace("/options/10/requires", R"(["deck:pine"])") + "]");
    const PriceBook& book = read.book;
    const Selection decked = home(book, large_plan, plain, slope, {"deck:pine", "steps", "lights"});
    const Change porch = with_pick(book, decked, pick(book, "porch"));
    REQUIRE(porch.blocked.empty());
    CHECK(picks(book, porch.selection) == RowWords{"lights", "porch"});
    CHECK(names(book, porch.also_removed) == RowWords{"deck", "steps"});
}

TEST_CASE("Taking out takes along what needed it, as far as that reaches") {
    const ReadBook read = patched_book("[" + op_add("/options/14/requires", R"(["lights"])") + "]");
    const PriceBook& book = read.book;
    const Selection all =
        home(book, small_plan, plain, flat, {"stove", "color", "flue", "lights", "no-lawn"});
    const Change dark = without_option(book, all, option(book, "lights"));
    CHECK(picks(book, dark.selection) == RowWords{"color", "no-lawn"});
    CHECK(names(book, dark.also_removed) == RowWords{"flue", "stove"});
    CHECK(dark.blocked.empty());
    // Another way to fulfil the need keeps it.
    const PriceBook& plain_book = small_book();
    const Selection two = home(plain_book, small_plan, plain, flat, {"warm", "flue", "stove"});
    CHECK(
        picks(plain_book, without_option(plain_book, two, option(plain_book, "flue")).selection) ==
        RowWords{"warm", "stove"});
    CHECK(
        picks(plain_book, without_option(plain_book, two, option(plain_book, "warm")).selection) ==
        RowWords{"flue", "stove"});
    // What is not there is taken out without a change.
    CHECK(without_option(plain_book, two, option(plain_book, "gas")).selection.picks == two.picks);
}
