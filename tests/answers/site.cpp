// The site: which lots and plans can be had, and which picks would not go along.
#include <shown.hpp>

#include <algorithm>

#include <quoin/answers/programs.hpp>
#include <quoin/answers/site.hpp>
#include <quoin/home/rules.hpp>

#include "homes.hpp"
#include "support/files.hpp"
#include "support/told.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const SiteLot& lot_named(const SiteAnswer& answer, const std::string& id) {
    for (const SiteLot& lot : answer.lots) {
        if (lot.lot.id == id) return lot;
    }
    throw std::runtime_error("no lot " + id);
}

} // namespace

TEST_CASE("Lots of the example: free, fitting, chosen") {
    const SiteAnswer answer = site(six_programs().sitting());
    REQUIRE(answer.lots.size() == 12);
    CHECK(answer.lot == "7");
    CHECK(lot_named(answer, "7").chosen);
    CHECK(lot_named(answer, "7").falls_out.empty());
    CHECK(lot_named(answer, "9").can_be_had());
    CHECK_FALSE(lot_named(answer, "8").can_be_had()); // held
    CHECK_FALSE(lot_named(answer, "3").fits);         // too narrow for the plan
    CHECK(lot_named(answer, "3").plans == std::vector<std::string>{"burdock", "comfrey"});
}

TEST_CASE("A level lot takes the walk-out basement, a shallow one the deck") {
    const SiteAnswer answer = site(six_programs().sitting());
    const SiteLot& shallow = lot_named(answer, "12");
    REQUIRE(shallow.falls_out.size() == 2);
    CHECK(shallow.falls_out[0].option == "walk-out");
    CHECK(shallow.falls_out[1].option == "deck");
    CHECK(told(shallow.falls_out[1].why) == "needs a lot whose rear setback is 30 ft or more");
}

TEST_CASE("What would fall out is all that has to: without it the rules hold there") {
    Homes homes(7);
    for (int i = 0; i < 20; ++i) {
        const Inquiry inquiry = homes.next();
        const SiteAnswer answer = site(Sitting(six_programs().desk, inquiry));
        for (std::size_t lot = 0; lot < answer.lots.size(); ++lot) {
            Selection there = inquiry.selection;
            there.lot = Index<Lot>(lot);
            const bool clean = conflicts(Homes::book(), there).empty();
            const auto& lots = Homes::book().lots[lot];
            const bool kept = std::all_of(
                there.incentives.begin(), there.incentives.end(), [&](const IncentivePick& pick) {
                    return allows(at(Homes::book().incentives, pick.incentive).lots, there.lot);
                });
            INFO("lot " << lots.id);
            CHECK(answer.lots[lot].falls_out.empty() == (clean && kept));
        }
    }
}

TEST_CASE("A move comes to the difference of two whole quotes, without what falls out") {
    Homes homes(11);
    int moves = 0;
    for (int i = 0; i < 20; ++i) {
        const Inquiry inquiry = homes.next();
        const Sitting sitting(six_programs().desk, inquiry);
        const std::size_t scenario = static_cast<std::size_t>(i) % inquiry.scenarios.size();
        const SiteAnswer answer = site(sitting, scenario);
        const PricedHome home = price_home(sitting.book(), inquiry.selection);
        for (const SiteLot& lot : answer.lots) {
            CHECK(lot.move.has_value() == (lot.can_be_had() && !lot.chosen));
            if (!lot.move) continue;
            Inquiry there = inquiry;
            there.selection.lot = Index<Lot>(&lot - answer.lots.data());
            for (const FallsOut& gone : lot.falls_out) {
                std::erase_if(there.selection.picks, [&](const Pick& pick) {
                    return at(sitting.book().options, pick.option).id == gone.option;
                });
                std::erase_if(there.selection.incentives, [&](const IncentivePick& pick) {
                    return at(sitting.book().incentives, pick.incentive).id == gone.option;
                });
            }
            CHECK(conflicts(sitting.book(), there.selection).empty());
            const PricedHome moved = price_home(sitting.book(), there.selection);
            CHECK(lot.move->price == moved.contract_price - home.contract_price);
            const LoanFigures before = sitting.figures(home).at(scenario);
            const LoanFigures after = sitting.figures(moved).at(scenario);
            REQUIRE(lot.move->added.available() == (before.available() && after.available()));
            if (!lot.move->added.available()) continue;
            CHECK(lot.move->added.per_month == after.monthly.total() - before.monthly.total());
            CHECK(lot.move->added.cash == after.cash.needed() - before.cash.needed());
            ++moves;
        }
    }
    CHECK(moves > 30);
}

TEST_CASE("Another elevation of the same plan is a move, the one in hand is none") {
    const SiteAnswer answer = site(six_programs().sitting());
    for (const SitePlan& plan : answer.plans) {
        for (const SiteElevation& each : plan.elevations) {
            const bool here = plan.chosen && each.elevation.id == answer.elevation;
            CHECK(each.move.has_value() == (plan.fits && !here));
            if (!plan.chosen || here) continue;
            REQUIRE(each.move->added.available());
            CHECK(each.move->price != Money{});
        }
    }
}

TEST_CASE("The programs are those the rate sheet has ladders for") {
    const Sitting sitting = six_programs().sitting();
    const ProgramsAnswer answer = programs(sitting);
    REQUIRE(answer.programs.size() == 6);
    std::size_t ladders = 0;
    for (const OfferedProgram& program : answer.programs) {
        CHECK_FALSE(program.fine_print.empty());
        for (const Ladder& ladder : program.ladders) CHECK(ladder.program == program.id);
        ladders += program.ladders.size();
    }
    CHECK(ladders == sitting.sheet().ladders.size());
}
