// What is cut out of the desk's files: what can only be of other plans, wherever it is named, and
// the rows of a sheet that no loan of this buyer rests on.
#include <shown.hpp>

#include <nlohmann/json.hpp>

#include <quoin/answers/quote.hpp>
#include <quoin/lending/reading.hpp>

#include "apps/take_home/book_of_plan.hpp"
#include "apps/take_home/kept.hpp"
#include "apps/take_home/lots_list.hpp"
#include "apps/take_home/program_in_play.hpp"
#include "apps/take_home/sheet_in_play.hpp"
#include "support/files.hpp"

using namespace quoin;
using namespace quoin::apps;
using namespace quoin::test;

namespace {

using Json = nlohmann::ordered_json;

const char* const two_plans = R"({
  "plans": [
    {"id": "own", "name": "Own", "note": "here", "elevations": [{"id": "a"}, {"id": "b"}]},
    {"id": "other", "name": "Other", "note": "there", "base_price": "9",
     "elevations": [{"id": "c", "name": "C", "price": "500"},
                    {"id": "d", "name": "D", "price": "-5"}]}],
  "options": [
    {"id": "all", "price": "1", "excludes": ["theirs"]},
    {"id": "both", "price": {"own": "1", "other": "2", "*": "3"}},
    {"id": "rest", "price": {"other": "2", "*": "3"}, "only": {"elevations": ["b", "c"]}},
    {"id": "theirs", "price": {"other": "2"}},
    {"id": "elsewhere", "price": "1", "only": {"elevations": ["c"]}},
    {"id": "barred", "price": "1", "only": {"plans": ["other"]}},
    {"id": "counters", "levels": [
      {"id": "plain", "price": "0"},
      {"id": "theirs-alone", "price": {"other": "2"}},
      {"id": "stone", "price": {"own": "4", "other": "5"}}],
     "included_level": {"other": "stone", "*": "plain"}},
    {"id": "needs-it", "price": "1", "requires": ["theirs"]},
    {"id": "needs-that", "price": "1", "requires": ["needs-it"]},
    {"id": "needs-either", "price": "1", "requires": [["theirs", "all"]]},
    {"id": "needs-level", "price": "1", "requires": ["counters:theirs-alone"]},
    {"id": "package", "price": "1", "parts": ["all", "barred"]}],
  "included": [
    {"text": "of all", "option": "theirs"},
    {"text": "of own", "plans": ["own", "other"]},
    {"text": "of other", "plans": ["other"]}],
  "incentives": [{"id": "mine", "plans": ["own"]}, {"id": "theirs", "plans": ["other"]}],
  "model": {"plan": "other"}
})";

Json cut(const char* plan) {
    return Json::parse(write_json(book_of_plan(json(two_plans).root, plan)));
}

std::vector<std::string> ids_of(const Json& items) {
    std::vector<std::string> ids;
    for (const Json& item : items) ids.push_back(item["id"]);
    return ids;
}

Json option_of(const Json& book, const std::string& id) {
    for (const Json& option : book["options"]) {
        if (option["id"] == id) return option;
    }
    FAIL("no option " << id);
    return {};
}

} // namespace

TEST_CASE("An option goes where it can be had on the plan, and all that it needs can") {
    CHECK(ids_of(cut("own")["options"]) == std::vector<std::string>{"all", "both", "rest",
                                                                    "counters", "needs-either",
                                                                    "needs-level"});
    CHECK(ids_of(cut("other")["options"]).size() == 12);
}

TEST_CASE("An option says that it is of this plan, at its price, and names no other's") {
    const Json book = cut("own");
    for (const Json& option : book["options"]) {
        CHECK(option["only"]["plans"] == Json::array({"own"}));
    }
    CHECK_FALSE(option_of(book, "all").contains("excludes"));
    CHECK(option_of(book, "both")["price"] == Json{{"own", "1"}});
    CHECK(option_of(book, "rest")["price"] == Json{{"*", "3"}});
    CHECK(option_of(book, "rest")["only"]["elevations"] == Json::array({"b"}));
    CHECK(option_of(book, "needs-either")["requires"] == Json::array({Json::array({"all"})}));
    CHECK(option_of(cut("other"), "all")["excludes"] == Json::array({"theirs"}));
}

TEST_CASE("A level of other plans alone goes, what asked for it asks for the next") {
    const Json book = cut("own");
    CHECK(ids_of(option_of(book, "counters")["levels"]) ==
          std::vector<std::string>{"plain", "stone"});
    CHECK(option_of(book, "counters")["included_level"] == Json{{"*", "plain"}});
    CHECK(option_of(book, "needs-level")["requires"] == Json::array({"counters:stone"}));
}

TEST_CASE("Another plan is told by name, size and least price, so is what comes with the own") {
    const Json book = cut("own");
    const Json other = book["plans"][1];
    CHECK_FALSE(other.contains("note"));
    CHECK(other["elevations"] == Json::array({Json{{"id", "d"}, {"name", "D"}, {"price", "-5"}}}));
    CHECK(book["plans"][0]["note"] == "here");
    REQUIRE(book["included"].size() == 2);
    CHECK_FALSE(book["included"][0].contains("option"));
    CHECK(book["included"][1]["plans"] == Json::array({"own"}));
    CHECK(ids_of(book["incentives"]) == std::vector<std::string>{"mine"});
    CHECK_FALSE(book.contains("model"));
    CHECK(cut("other").contains("model"));
}

TEST_CASE("A drawing loses the changes that only what is gone would make") {
    const Value book = book_of_plan(json(two_plans).root, "own");
    const Value drawing = json(R"({"changes": [
        {"floor": "1", "when": [{"option": "all"}], "unless": [{"option": "theirs"}]},
        {"floor": "2", "when": [{"option": "theirs"}]},
        {"floor": "3", "when": [{"elevation": "a"}], "unless": [{"option": "all"}]}]})")
                              .root;
    const Json left = Json::parse(write_json(drawing_for(drawing, book)));
    REQUIRE(left["changes"].size() == 2);
    CHECK_FALSE(left["changes"][0].contains("unless"));
    CHECK(left["changes"][1]["floor"] == "3");
    CHECK(left["changes"][1]["unless"].size() == 1);
}

TEST_CASE("What has no name in the table is dropped, in a map of a surveyor's program too") {
    const Value map = json(R"({"type": "FeatureCollection", "owner": "Somebody", "features": [
        {"type": "Feature", "id": 7, "geometry": {"type": "Polygon", "coordinates": [[[1.5, 2]]]},
         "properties": {"lot": "1", "buyer": "Somebody", "note": {"en": "a", "es": "b"}}}]})")
                          .root;
    const Json left = Json::parse(write_json(kept(map, may_go_of_map_in_degrees())));
    const Json wanted = Json::parse(R"({"type": "FeatureCollection", "features": [
        {"type": "Feature", "geometry": {"type": "Polygon", "coordinates": [[[1.5, 2]]]},
         "properties": {"lot": "1"}}]})");
    CHECK(left == wanted);
}

TEST_CASE("A text in several languages goes whole, but for what is said about it") {
    const Members names = {{"name"}, {"price", {{"*"}}}};
    const Value item = json(R"({"name": {"en": "Deck", "es": "Terraza", "comment": "why"},
        "price": {"own": 1.50, "comment": "secret"}, "comment": {"en": "no"}})")
                           .root;
    CHECK(Json::parse(write_json(kept(item, names))) ==
          Json::parse(R"({"name": {"en": "Deck", "es": "Terraza"}, "price": {"own": 1.50}})"));
    CHECK(write_json(kept(item, names)).find("1.50") != std::string::npos); // as it was written
}

TEST_CASE("A list of lots is written as a spreadsheet reads it, without the desk's columns") {
    Findings findings;
    const Document list = parse_csv(
        std::make_shared<Source>(
            "lots.csv", "id,premium,note.es,office_note.en,comment,measure.width_ft,plans\n"
                        "1,\"$6,500\",\"Dijo \"\"no\"\"\",secret,why,80,own other\n"
                        "2,$0,,,,62,\n"),
        findings);
    REQUIRE(findings.none());
    CHECK(lots_list(kept_rows(list.root, may_go_of_lots())) ==
          "id,premium,note.es,measure.width_ft,plans\n"
          "1,\"$6,500\",\"Dijo \"\"no\"\"\",80,own other\n"
          "2,$0,,62,\n");
}

TEST_CASE("A program stands alone with the rules it takes over, and the terms in play") {
    const Value own = json(R"({"id": "own", "rules_of": "other", "terms_months": [180, "360"],
        "rules": {"maximum_ltv": [{"source": "own"}], "loan_limit": []}})")
                          .root;
    const Value other = json(R"({"id": "other", "ratios": [{"back": "50"}],
        "rules": {"maximum_ltv": [{"source": "other"}], "loan_limit": [{"source": "limit"}]}})")
                            .root;
    const Json left = Json::parse(write_json(program_in_play(own, &other, {360})));
    CHECK_FALSE(left.contains("rules_of"));
    CHECK(left["terms_months"] == Json::array({"360"}));
    CHECK(left["rules"]["maximum_ltv"][0]["source"] == "own");
    CHECK(left["rules"]["loan_limit"][0]["source"] == "limit");
    CHECK(left["ratios"][0]["back"] == "50");
}

// The rows of a sheet.

namespace {

const char* const sheet_text = R"({
  "format": "quoin/rates/1", "id": "day", "date": "2026-11-20", "good_through": "2026-12-18",
  "status": "sample", "lender": {"name": "A lender", "license": "none"},
  "ladders": [
    {"program": "fha", "months": 360, "lock_days": 180, "rungs": [
      {"rate": "5.750", "points": "0.5"}, {"rate": "5.875", "points": "0.0"},
      {"rate": "6.000", "points": "-0.5"}]},
    {"program": "va", "months": 360, "lock_days": 180, "rungs": [{"rate": "6", "points": "0"}]}],
  "adjustments": [
    {"name": "High scores", "programs": ["fha", "va"], "status": "sample", "source": "none",
     "value": "points", "dimensions": ["score"], "rows": [{"score": ">= 760", "value": "-0.25"}]}]
})";

/// Six programs' home with its FHA loan alone, on this sheet.
struct OnSheet {
    Desk desk = six_programs().desk;
    Inquiry inquiry = six_programs().inquiry;

    explicit OnSheet(const std::string& text) {
        Findings findings;
        desk.lending.sheets = {read_rate_sheet(json(text), findings)};
        if (!findings.none()) throw Refused(std::move(findings));
        inquiry.rates = "day";
        inquiry.scenarios = {inquiry.scenarios.at(3)};
    }
    [[nodiscard]] Sitting sitting() const { return {desk, inquiry}; }
    [[nodiscard]] ScenarioAnswer loan() const { return quote(sitting()).scenarios.front(); }
};

std::string excerpt_of(const OnSheet& on) {
    return write_json(sheet_in_play(json(sheet_text).root, on.sitting()));
}

} // namespace

TEST_CASE("An adjustment that adds nothing to a loan says so of this loan, and of no other") {
    const OnSheet desk(sheet_text);
    const Json excerpt = Json::parse(excerpt_of(desk));
    CHECK(excerpt["ladders"].size() == 1);
    CHECK(excerpt["ladders"][0]["rungs"].size() == 1);
    CHECK(excerpt["adjustments"][0]["programs"] == Json::array({"fha"}));
    CHECK(excerpt["adjustments"][0]["rows"] ==
          Json::array({Json{{"value", "0"}, {"score", "= 742"}}}));
    OnSheet home(excerpt_of(desk));
    REQUIRE(home.loan().available());
    CHECK(home.loan().terms.rate == desk.loan().terms.rate);
    CHECK(home.loan().terms.points == desk.loan().terms.points);
    // With another score the desk would add or take off; the excerpt does not know, and says so.
    home.inquiry.scenarios.front().score = 741;
    CHECK_FALSE(home.loan().available());
    REQUIRE(home.loan().refusals.size() == 1);
    CHECK(home.loan().refusals.front().why == Barred::rate_not_offered);
}

TEST_CASE("A loan against points keeps the rate without them beside its own") {
    OnSheet desk(sheet_text);
    desk.inquiry.scenarios.front().rate = {RateChoice::By::points, Points(decimal("0.5")), Rate{}};
    const Json excerpt = Json::parse(excerpt_of(desk));
    const Json rungs = excerpt["ladders"][0]["rungs"];
    REQUIRE(rungs.size() == 2);
    CHECK(rungs[0]["rate"] == "5.750");
    CHECK(rungs[1]["rate"] == "5.875");
}

TEST_CASE("A quoted rate needs no row of the sheet") {
    OnSheet desk(sheet_text);
    desk.inquiry.scenarios.front().rate = {RateChoice::By::quoted, Points{}, rate("6.1")};
    const Json excerpt = Json::parse(excerpt_of(desk));
    CHECK(excerpt["ladders"].empty());
    CHECK_FALSE(excerpt.contains("adjustments"));
    const OnSheet home = [&] {
        OnSheet on(excerpt_of(desk));
        on.inquiry.scenarios = desk.inquiry.scenarios;
        return on;
    }();
    CHECK(home.loan().available());
}
