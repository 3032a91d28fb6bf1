// The site: which lots and plans can be had, and which picks would not go along.
#include <shown.hpp>

#include <algorithm>

#include <quoin/answers/programs.hpp>
#include <quoin/answers/site.hpp>
#include <quoin/home/rules.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/text/ids.hpp>

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

namespace {

/// The example with its drawings, on another lot or plan.
SiteAnswer drawn_site(const std::string& lot, const std::string& plan,
                      Language language = Language::english) {
    static const auto english =
        apps::load_inquiry(QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/six-programs.json",
                           QUOIN_SOURCE_DIR "/rates", Language::english, apps::Drawn::yes);
    static const auto spanish =
        apps::load_inquiry(QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/six-programs.json",
                           QUOIN_SOURCE_DIR "/rates", Language::spanish, apps::Drawn::yes);
    const apps::Loaded& loaded = language == Language::english ? *english : *spanish;
    Inquiry inquiry = loaded.inquiry;
    inquiry.selection.picks.clear();
    inquiry.selection.incentives.clear();
    inquiry.selection.lot = *index_of(loaded.desk.book.lots, lot);
    inquiry.selection.plan = *index_of(loaded.desk.book.plans, plan);
    inquiry.selection.elevation = Index<Elevation>{};
    return site(Sitting(loaded.desk, inquiry));
}

std::string svg_of(const SiteAnswer& answer, Language language = Language::english) {
    const Document document = json(json_text_of(answer, catalogue_in(language)));
    return document.root.find("map")->find("svg")->literal;
}

std::size_t count_of(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) {
        ++count;
    }
    return count;
}

} // namespace

TEST_CASE("The map shows each lot by its status, and the lot in hand") {
    const std::string svg = svg_of(drawn_site("7", "teasel"));
    CHECK(count_of(svg, "<g class=\"lot ") == 12);
    CHECK(count_of(svg, "data-lot=\"7\"") == 1);
    CHECK(count_of(svg, "class=\"lot free chosen\"") == 1);
    CHECK(count_of(svg, "class=\"lot sold\"") == 2);
    CHECK(count_of(svg, "class=\"lot held\"") == 2);
    CHECK(count_of(svg, "class=\"lot free small\"") == 3); // 3, 10 and 11
    CHECK(count_of(svg, "class=\"setback\"") == 1);
    CHECK(count_of(svg, "class=\"fall\"") == 7);  // all that are not level
    CHECK(count_of(svg, "class=\"house\"") == 8); // of free lots
    CHECK(count_of(svg, "Oxbarrow Lane</text>") == 1);
    CHECK(svg.size() < 20'000);
}

TEST_CASE("The map needs neither style nor script, and speaks the language asked for") {
    const std::string svg =
        svg_of(drawn_site("6", "burdock", Language::spanish), Language::spanish);
    for (const char* active : {"<style", "style=", "<script", "href", "onclick", "url("}) {
        CHECK(svg.find(active) == std::string::npos);
    }
    CHECK(count_of(svg, "Pradera</text>") == 1);
    CHECK(count_of(svg, "50 pies</text>") == 1);
    CHECK(count_of(svg, "su lote</text>") == 1);
    CHECK(count_of(svg, "small") == 0); // burdock fits everywhere
}

TEST_CASE("Names out of the data are escaped on the map") {
    SiteAnswer answer = drawn_site("7", "teasel");
    answer.map->map.streets[1].name = "<b onclick=\"x\">A & B</b>";
    const std::string svg = svg_of(answer);
    CHECK(svg.find("<b ") == std::string::npos);
    CHECK(svg.find("&lt;b onclick=&quot;x&quot;&gt;A &amp; B&lt;/b&gt;") != std::string::npos);
}

TEST_CASE("Without a map there is none") {
    const SiteAnswer answer = site(six_programs().sitting());
    CHECK_FALSE(answer.map);
    CHECK(json_text_of(answer, catalogue_in(Language::english)).find("\"map\": null") !=
          std::string::npos);
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
