// How an option stands for a home, form by form, and the change that would bring it in.
#include <catch.hpp>

#include <string>
#include <vector>

#include <quoin/home/standing.hpp>
#include <quoin/text/ids.hpp>

#include "support/small_book.hpp"
#include "support/told.hpp"

using namespace quoin;
using namespace quoin::test;
using Kind = OptionStanding::Kind;

namespace {

constexpr Index<Stage> permit(0);
constexpr Index<Stage> framing(1);
constexpr Index<Stage> painting(2);

/// "top:stone", "color:gray" or "deck".
Pick form(const std::string& name) {
    const std::size_t colon = name.find(':');
    Pick pick;
    pick.option = index_of(small_book().options, name.substr(0, colon)).value();
    if (colon == std::string::npos) return pick;
    const Option& option = quoin::at(small_book().options, pick.option);
    const std::string rest = name.substr(colon + 1);
    pick.level = index_of(option.levels, rest);
    pick.choice = index_of(option.choices, rest);
    return pick;
}

Selection home(const std::string& plan, const std::string& lot,
               const std::vector<std::string>& chosen, std::optional<Index<Stage>> stage = {}) {
    Selection selection;
    selection.plan = index_of(small_book().plans, plan).value();
    selection.lot = index_of(small_book().lots, lot).value();
    selection.stage = stage;
    for (const std::string& name : chosen) selection.picks.push_back(form(name));
    return selection;
}

OptionStanding standing(const Selection& selection, const std::string& name) {
    return option_standing(small_book(), selection, form(name));
}

std::string reason(const OptionStanding& standing) {
    return told(why_not(small_book(), standing.reason()));
}

} // namespace

TEST_CASE("Each form of an option stands in one way") {
    struct Row {
        Selection home;
        const char* form;
        Kind kind;
        bool takes_out;
    };
    for (const Row& row : {
             Row{home("small", "1", {}), "top:plain", Kind::included, false},
             Row{home("small", "1", {}), "top:stone", Kind::offered, false},
             Row{home("small", "1", {}), "top:rare", Kind::barred, false},
             Row{home("large", "1", {}), "top:plain", Kind::included, false}, // under the included
             Row{home("large", "1", {}), "top:rare", Kind::offered, false},
             Row{home("small", "1", {"top:stone"}), "top:stone", Kind::chosen, true},
             Row{home("small", "1", {"top:stone"}), "top:plain", Kind::included, true},
             Row{home("small", "1", {}), "color:white", Kind::included, false},
             Row{home("small", "1", {"color:gray"}), "color:white", Kind::offered, false},
             Row{home("small", "1", {}), "lamps", Kind::included, false},
             Row{home("small", "1", {"warm"}), "stove", Kind::held, false},
             Row{home("small", "1", {"warm"}), "top:plain", Kind::held, false},
             Row{home("large", "1", {"warm", "top:rare"}), "top:stone", Kind::held, true},
             Row{home("large", "1", {"warm"}), "top:rare", Kind::offered, false},
             Row{home("small", "1", {}, painting), "top:plain", Kind::included, false},
             Row{home("small", "1", {"warm"}, framing), "flue", Kind::held,
                 false}, // its cutoff passed
             Row{home("small", "1", {}, framing), "flue", Kind::barred, false},
             Row{home("large", "1", {}), "porch", Kind::barred, false},
         }) {
        CAPTURE(row.form, row.home.picks.size());
        const OptionStanding it = standing(row.home, row.form);
        CHECK(it.kind == row.kind);
        CHECK(it.takes_out == row.takes_out);
        CHECK(it.change.blocked.empty() == (row.kind != Kind::barred));
        CHECK(it.package.has_value() == (row.kind == Kind::held));
        if (row.takes_out) CHECK(it.change.selection.find(form(row.form).option) == nullptr);
    }
    CHECK(standing(home("small", "1", {"warm"}), "top:plain").better);
    CHECK_FALSE(standing(home("small", "1", {"warm"}), "top:stone").better);
}

TEST_CASE("What bars an option is told, and whether the home itself does") {
    const OptionStanding level = standing(home("small", "1", {}), "top:rare");
    CHECK(reason(level) == "not available on this plan");
    CHECK(name_of(small_book(), level.reason().of) == "top:rare");
    CHECK(level.barred_by_the_home());
    const OptionStanding porch = standing(home("large", "1", {}), "porch");
    CHECK(reason(porch) == "needs a lot whose rear is 30 ft or more");
    CHECK(porch.barred_by_the_home());
    // Deck is past its cutoff and the lot too small for a porch: the need cannot be met any more.
    const OptionStanding steps = standing(home("large", "1", {}, permit), "steps");
    CHECK(reason(steps) == "needs deck:cedar or porch");
    CHECK_FALSE(steps.barred_by_the_home());
}

TEST_CASE("An offered option says the change that it takes") {
    const OptionStanding steps = standing(home("large", "1", {}), "steps");
    REQUIRE(steps.kind == Kind::offered);
    CHECK(steps.change.also_added == std::vector{form("deck").option});
    const OptionStanding gas = standing(home("small", "1", {"flue", "stove"}), "gas");
    REQUIRE(gas.kind == Kind::offered);
    CHECK(gas.change.also_removed == std::vector{form("stove").option});
}
