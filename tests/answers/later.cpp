// Now or later: each way held against whole quotes of the same home.
#include <shown.hpp>

#include <algorithm>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/later.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/inquiry/asking.hpp>

#include "support/files.hpp"
#include "support/told.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Pick pick(const char* text) {
    Findings findings;
    return asked_option(six_programs().desk.book, text, findings).value();
}

const LaterPath& way(const LaterScenario& s, LaterWay wanted) {
    for (const LaterPath& path : s.paths) {
        if (path.way == wanted) return path;
    }
    throw std::runtime_error("no such way");
}

LaterAnswer answer_for(const char* option, const LaterFacts& facts = {}) {
    return later(six_programs().sitting(), {pick(option)}, facts);
}

} // namespace

TEST_CASE("Financed from the builder is what adds says of the option") {
    const Sitting sitting = six_programs().sitting();
    const AddsAnswer added = adds(sitting, {pick("garage-insulation")});
    const LaterAnswer answer = answer_for("garage-insulation");
    REQUIRE(answer.items.size() == 1);
    REQUIRE(added.items.front().standing == Standing::offered);
    for (std::size_t i = 0; i < answer.items[0].scenarios.size(); ++i) {
        const Added& one = added.items.front().by_scenario[i];
        const LaterPath& path = way(answer.items[0].scenarios[i], LaterWay::financed);
        CHECK(path.at_closing == one.cash);
        CHECK(path.a_month == one.per_month);
        CHECK(path.cost.back() == one.over_loan); // nothing is owed at the end
    }
}

TEST_CASE("A level that the plan is not offered cannot be had from the builder") {
    Desk desk = six_programs().desk;
    const Pick veined = pick("kitchen-counters:quartz-veined");
    at(at(desk.book.options, veined.option).levels, veined.level.value()).price = PriceByPlan{};
    const LaterItem item = later(Sitting(desk, six_programs().inquiry), {veined}, {}).items.front();
    CHECK(told(item.why_not) == "not available on this plan");
    CHECK(item.price == Money{});
}

TEST_CASE("Paid in cash the loan stays, and so do its payment and its insurance") {
    const LaterAnswer answer = answer_for("garage-insulation");
    const LaterItem& item = answer.items.front();
    for (const LaterScenario& s : item.scenarios) {
        const LaterPath& cash = way(s, LaterWay::cash);
        if (!cash.available()) continue;
        CAPTURE(s.terms.name);
        CHECK(cash.at_closing >= item.price);
        // A month more is tax, districts and insurance on the price, less any mortgage insurance.
        CHECK(cash.a_month < way(s, LaterWay::financed).a_month);
        CHECK(cash.cost.front() == cash.at_closing);
    }
}

TEST_CASE("After closing costs the estimate from its month on, and a personal loan its interest") {
    const LaterFacts facts{7, PersonalLoan{rate("12"), Months(24)}};
    const LaterAnswer answer = answer_for("garage-opener", facts);
    const LaterItem& item = answer.items.front();
    REQUIRE(item.later);
    const LaterScenario& s = item.scenarios.front();
    const LaterPath& after = way(s, LaterWay::after);
    CHECK(after.at_closing == Money{});
    CHECK(after.cost.at(6) == Money{});
    CHECK(after.cost.at(7) == item.later->estimate);
    CHECK(after.cost.back() == item.later->estimate);
    const LaterPath& lent = way(s, LaterWay::after_lent);
    const Schedule loan = amortize({item.later->estimate, rate("12"), Months(24)});
    CHECK(lent.a_month == loan.payment());
    CHECK(lent.months == 24);
    CHECK(lent.cost.at(7) == item.later->estimate); // all of it is owed
    CHECK(lent.cost.at(31) == item.later->estimate + loan.total_interest());
    CHECK(lent.cost.back() == lent.cost.at(31));
}

TEST_CASE("An estimate for one is taken as often as the option is counted") {
    for (const auto& [asked, count] :
         {std::pair{"recessed-lights=2", 2}, {"recessed-lights=10", 10}}) {
        const LaterAnswer answer = answer_for(asked);
        const LaterItem& item = answer.items.front();
        REQUIRE(item.later);
        CHECK(item.later->estimate == money("260") * count);
        CHECK(way(item.scenarios.front(), LaterWay::after).cost.back() == item.later->estimate);
    }
    // Laid by the buyer, all of it: the estimate is for the whole.
    CHECK(answer_for("rear-sod=1000").items.front().later->estimate == money("1800"));
}

TEST_CASE("A break-even is the first month of a stretch in which a way has cost more") {
    const LaterAnswer answer = answer_for("garage-insulation");
    for (const LaterScenario& s : answer.items.front().scenarios) {
        for (const LaterBreakEven& even : s.break_even) {
            const LaterPath& dearer = way(s, even.dearer);
            const LaterPath& than = way(s, even.than);
            const auto month = static_cast<std::size_t>(even.month);
            CHECK(dearer.cost.at(month) > than.cost.at(month));
            if (month > 1) CHECK(dearer.cost.at(month - 1) <= than.cost.at(month - 1));
            const auto end = static_cast<std::size_t>(
                even.to.value_or(static_cast<int>(dearer.cost.size()) - 1));
            for (std::size_t at = month; at <= end; ++at) {
                REQUIRE(dearer.cost.at(at) > than.cost.at(at));
            }
            if (even.to) CHECK(dearer.cost.at(end + 1) <= than.cost.at(end + 1));
        }
        // Every month in which one has cost more than another lies in one of them.
        for (const LaterPath& a : s.paths) {
            for (const LaterPath& b : s.paths) {
                for (std::size_t at = 1; at < std::min(a.cost.size(), b.cost.size()); ++at) {
                    const bool told = std::any_of(
                        s.break_even.begin(), s.break_even.end(), [&](const LaterBreakEven& even) {
                            const int month = static_cast<int>(at);
                            return even.dearer == a.way && even.than == b.way &&
                                   even.month <= month && month <= even.to.value_or(month);
                        });
                    REQUIRE(told == (a.cost[at] > b.cost[at]));
                }
            }
        }
    }
}

TEST_CASE("An option in the home is asked about as if it were not there yet") {
    const auto& picks = six_programs().inquiry.selection.picks;
    const PriceBook& book = six_programs().desk.book;
    const auto priced = std::find_if(picks.begin(), picks.end(), [&](const Pick& each) {
        return at(book.options, each.option).later.has_value();
    });
    REQUIRE(priced != picks.end());
    const LaterAnswer answer = later(six_programs().sitting(), {*priced}, {});
    CHECK(answer.items.front().price > Money{});
    CHECK_FALSE(answer.items.front().why_not);
}

TEST_CASE("What stands against an option is told by its name, never its id") {
    // The lot is too narrow for the garage bay that it needs.
    const auto loaded =
        apps::load_inquiry(QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/short-of-cash.json",
                           QUOIN_SOURCE_DIR "/rates");
    const LaterAnswer answer = later(loaded->sitting(), {pick("wider-drive")}, {});
    CHECK(told(answer.items.front().why_not) == "needs Third garage bay");
}
