// Reading an inquiry: what each member means, and every mistake with its place.
#include <shown.hpp>

#include <fstream>

#include <quoin/inquiry/inquiry.hpp>

#include <quoin/text/problems.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// The small inquiry's own text, with one stretch of it replaced.
std::string changed(std::string_view old, std::string_view by) {
    static const std::string text = [] {
        std::ifstream in(QUOIN_SOURCE_DIR "/tests/golden/data/buyer.json");
        return std::string(std::istreambuf_iterator<char>(in), {});
    }();
    std::string out = text;
    const std::size_t at = out.find(old);
    if (at == std::string::npos) throw std::runtime_error("not there: " + std::string(old));
    return out.replace(at, old.size(), by);
}

const Desk& desk() {
    static const auto loaded = small();
    return loaded->desk;
}

Inquiry read(const std::string& text, Findings& findings) {
    const Document document = json(text);
    return read_inquiry(document, desk(), findings);
}

Inquiry read_sound(std::string_view old, std::string_view by) {
    Findings findings;
    Inquiry inquiry = read(changed(old, by), findings);
    if (!findings.none()) throw Refused(std::move(findings));
    return inquiry;
}

struct Mistake {
    const char* old;
    const char* by;
    const char* id;
    const char* path;
};

const std::string first_pick = R"({"option": "floor", "level": "oak"})";
const std::string first_down = R"("down": {"percent": "10"})";
const std::string first_rate = R"("rate": {"points": "0"})";

void check_mistakes(const std::vector<Mistake>& mistakes) {
    for (const Mistake& mistake : mistakes) {
        CAPTURE(mistake.by);
        Findings findings;
        static_cast<void>(read(changed(mistake.old, mistake.by), findings));
        REQUIRE(findings.problems().size() == 1);
        CHECK(name_of(findings.problems().front().id) == mistake.id);
        CHECK(findings.problems().front().path == mistake.path);
    }
}

} // namespace

TEST_CASE("The small inquiry means what it says") {
    const Inquiry inquiry = read_sound("", "");
    CHECK(inquiry.buyer == "Somebody");
    CHECK(inquiry.as_of == date("2026-11-24"));
    CHECK(inquiry.closing == date("2027-01-15"));
    CHECK(inquiry.selection.plan == Index<Plan>{});
    CHECK(inquiry.selection.lot == Index<Lot>{});
    CHECK_FALSE(inquiry.selection.stage);
    REQUIRE(inquiry.selection.picks.size() == 4);
    CHECK(inquiry.selection.picks[0].level == Index<Level>(1));
    CHECK(inquiry.selection.picks[2].quantity == decimal("3"));
    CHECK(inquiry.selection.picks[3].choice == Index<Choice>(1));
    REQUIRE(inquiry.wishes.size() == 1);
    CHECK(inquiry.wishes.front().rank == 1);
    CHECK(inquiry.selection.find(inquiry.wishes.front().pick.option) == nullptr);
    CHECK(inquiry.selection.requests.front().estimate == money("350"));
    CHECK(inquiry.selection.incentives.front().use == IncentiveUse::closing_costs);
    REQUIRE(inquiry.scenarios.size() == 2);
    CHECK(inquiry.scenarios[0].down.percent == Percent(decimal("10")));
    CHECK(inquiry.scenarios[0].score == 700); // the inquiry's, where a scenario has none
    CHECK(inquiry.scenarios[0].lock_days == 60);
    CHECK(inquiry.scenarios[1].down.by == DownPayment::By::amount);
    CHECK(inquiry.scenarios[1].rate.by == RateChoice::By::note);
    CHECK(inquiry.find_scenario("A third down") == &inquiry.scenarios[1]);
    CHECK(inquiry.find_scenario("Half down") == nullptr);
}

TEST_CASE("Dates: the book's first and last day count, the contract falls on the inquiry's day") {
    CHECK(read_sound("\"2026-11-24\", \"contract\"", "\"2026-12-31\", \"contract\"").as_of ==
          date("2026-12-31"));
    CHECK(read_sound("\"contract\": \"2026-11-24\", ", "").contract == date("2026-11-24"));
    CHECK(read_sound("\"closing\": \"2027-01-15\"", "\"closing\": \"2026-11-24\"").closing ==
          date("2026-11-24"));
    check_mistakes({
        {"\"2026-11-24\", \"contract\"", "\"2027-01-01\", \"contract\"", "book-expired", "/as_of"},
        {"\"as_of\": \"2026-11-24\"", "\"as_of\": \"2026-11-31\"", "not-a-date", "/as_of"},
        {"\"closing\": \"2027-01-15\"", "\"closing\": \"2026-11-23\"", "dates-reversed",
         "/closing"},
        {"\"closing\": \"2027-01-15\"", "\"closing\": \"15 Jan 2027\"", "not-a-date", "/closing"},
    });
    // Before the book's first day there is no rate sheet either, unless one is named.
    Findings early;
    static_cast<void>(
        read(changed("\"as_of\": \"2026-11-24\"", "\"as_of\": \"2026-10-31\", \"rates\": \"day\""),
             early));
    REQUIRE(early.problems().size() == 1);
    CHECK(name_of(early.problems().front().id) == "book-not-yet");
}

TEST_CASE("Rates: the newest sheet dated on or before the day, or the one that is named") {
    const Lending& lending = desk().lending;
    CHECK(read_sound("", "").sheet(lending)->id == "day");
    CHECK(read_sound("\"as_of\": \"2026-11-24\"", "\"as_of\": \"2026-11-20\"").sheet(lending) !=
          nullptr);
    CHECK(lending.newest_sheet(date("2026-11-19")) == nullptr);
    Findings findings;
    const Lending two = apps::load_lending(QUOIN_SOURCE_DIR "/rates", findings);
    REQUIRE(findings.none());
    CHECK(two.newest_sheet(date("2026-11-19"))->id == "2026-10-16");
    CHECK(two.newest_sheet(date("2026-11-20"))->id == "2026-11-20");
    check_mistakes({
        {"\"as_of\": \"2026-11-24\"", "\"as_of\": \"2026-11-19\"", "rates-missing", "/as_of"},
        {"\"plan\"", "\"rates\": \"dya\", \"plan\"", "name-unknown", "/rates"},
        {"\"plan\"", "\"place\": \"there\", \"plan\"", "name-unknown", "/place"},
        {"\"program\": \"short\"", "\"program\": \"shrot\"", "name-unknown",
         "/scenarios/0/program"},
    });
}

TEST_CASE("The home: names, kinds, quantities and rules") {
    check_mistakes({
        {"\"cabin\"", "\"cabn\"", "name-unknown", "/plan"},
        {"\"lot\": \"1\"", "\"lot\": \"4\"", "name-unknown", "/lot"},
        {"\"lot\": \"1\"", "\"lot\": \"3\"", "lot-not-free", "/lot"},
        {"\"elevation\": \"plain\"", "\"elevation\": \"fancy\"", "name-unknown", "/elevation"},
        {"\"flue\"", "\"flu\"", "name-unknown", "/selections/1"},
        {"\"flue\"", "\"stove\"", "option-needs", "/selections/1"},
        {"\"flue\"", "\"walk-out\"", "option-not-here", "/selections/1"},
        {first_pick.c_str(), "\"floor\"", "pick-incomplete", "/selections/0"},
        {"\"flue\"", "\"flue\", \"flue\"", "selected-twice", "/selections/2"},
        {"\"flue\"", "\"flue\", \"stove\", \"heater\"", "options-exclude", "/selections/3"},
        {first_pick.c_str(), R"({"option": "floor"})", "pick-incomplete", "/selections/0"},
        {first_pick.c_str(), R"({"option": "floor", "level": "teak"})", "name-unknown",
         "/selections/0/level"},
        {first_pick.c_str(), R"({"option": "lamps"})", "pick-incomplete", "/selections/0"},
        {first_pick.c_str(), R"({"option": "lamps", "spend": "-1"})", "out-of-range",
         "/selections/0/spend"},
        {R"("choice": "sand")", R"("agreed": false)", "pick-incomplete", "/selections/3"},
        {"\"quantity\": 3", "\"quantity\": 9", "quantity-not-allowed", "/selections/2/quantity"},
        {"\"quantity\": 3", "\"quantity\": 2.5", "quantity-not-allowed", "/selections/2/quantity"},
        {"\"quantity\": 3", "\"quantity\": 3, \"qty\": 3", "member-unknown", "/selections/2/qty"},
        {"\"flue\"", R"({"option": "flue", "quantity": 2})", "quantity-not-allowed",
         "/selections/1/quantity"},
        {"\"area\": \"outside\"", "\"area\": \"roof\"", "name-unknown", "/requests/0/area"},
    });
}

TEST_CASE("A pick that was agreed stays past its cutoff, one that was not is refused") {
    const char* const past = "\"plan\": \"cabin\", \"stage\": \"frame\"";
    Findings findings;
    static_cast<void>(read(changed("\"plan\": \"cabin\"", past), findings));
    REQUIRE(findings.problems().size() == 1); // the flue, to be chosen before framing
    CHECK(name_of(findings.problems().front().id) == "past-cutoff");
    CHECK(findings.problems().front().path == "/selections/1");

    std::string agreed = changed("\"plan\": \"cabin\"", past);
    const std::string flue = "\"flue\"";
    agreed.replace(agreed.find(flue), flue.size(), R"({"option": "flue", "agreed": true})");
    Findings none;
    CHECK(read(agreed, none).selection.picks[1].agreed);
    CHECK(none.none());
    // At the stage before, it is still time.
    CHECK(read_sound("\"plan\": \"cabin\"", "\"plan\": \"cabin\", \"stage\": \"permit\"")
              .selection.stage == Index<Stage>{});
}

TEST_CASE("Wishes: any form of an option, ranked by the buyer or in their order") {
    const Inquiry inquiry = read_sound(
        R"({"option": "stove", "rank": 1})",
        R"({"option": "stove", "rank": 7}, "heater", {"option": "lamps", "spend": 400})");
    REQUIRE(inquiry.wishes.size() == 3);
    CHECK(inquiry.wishes[0].rank == 7);
    CHECK(inquiry.wishes[1].rank == 2);
    CHECK(inquiry.wishes[2].pick.spend == money("400"));
    check_mistakes({
        {"\"rank\": 1", "\"rank\": 0", "not-a-whole-number", "/wishes/0/rank"},
        {R"({"option": "stove", "rank": 1})", "\"stov\"", "name-unknown", "/wishes/0"},
    });
}

TEST_CASE("Incentives: uses, last days of contract and closing, amounts") {
    CHECK(read_sound("\"contract\": \"2026-11-24\"", "\"contract\": \"2026-12-15\"").contract ==
          date("2026-12-15"));
    CHECK(read_sound("\"use\": \"closing costs\"", "\"use\": \"price\", \"amount\": \"200\"")
              .selection.incentives.front()
              .amount == money("200"));
    check_mistakes({
        {"\"contract\": \"2026-11-24\"", "\"contract\": \"2026-12-16\"", "incentive-not-here",
         "/incentives/0/id"},
        {"\"closing costs\"", "\"points\"", "incentive-not-here", "/incentives/0/id"},
        {"\"closing costs\"", "\"gifts\"", "not-one-of", "/incentives/0/use"},
        {"\"closing costs\"", "\"price\", \"amount\": \"-1\"", "out-of-range",
         "/incentives/0/amount"},
        {"\"id\": \"opening\"", "\"id\": \"openings\"", "name-unknown", "/incentives/0/id"},
    });
}

TEST_CASE("What comes off the price leaves some of it") {
    Desk rich = desk();
    rich.book.incentives.front().amount = money("150000");
    Findings findings;
    static_cast<void>(read_inquiry(
        json(changed("\"use\": \"closing costs\"", "\"use\": \"price\"")), rich, findings));
    REQUIRE(findings.problems().size() == 1);
    CHECK(name_of(findings.problems().front().id) == "incentive-not-here");
    CHECK(findings.problems().front().path == "/incentives/0/id");
    // Where all of it goes to closing costs, the loan's own caps hold.
    Findings none;
    static_cast<void>(read_inquiry(json(changed("", "")), rich, none));
    CHECK(none.none());
}

TEST_CASE("Ways to pay: down payments, rates, terms and names") {
    const Inquiry inquiry = read_sound(
        first_down, R"("down": {"cash": "23000"}, "score": 640, "fee": "cash", "use": "subsequent",
                       "mi_ends": "request", "extra_principal": "50", "lock_days": 30)");
    const Scenario& scenario = inquiry.scenarios.front();
    CHECK(scenario.down.by == DownPayment::By::cash);
    CHECK(scenario.down.amount == money("23000"));
    CHECK(scenario.score == 640);
    CHECK_FALSE(scenario.finance_fee);
    CHECK(scenario.use == EntitlementUse::subsequent);
    CHECK(scenario.end_mi_on_request);
    CHECK(scenario.extra_principal == money("50"));
    CHECK(scenario.lock_days == 30);
    const Scenario quoted =
        read_sound(first_rate, R"("rate": {"quoted": "6.125", "points": "0.5"})").scenarios.front();
    CHECK(quoted.rate.by == RateChoice::By::quoted);
    CHECK(quoted.rate.note == rate("6.125"));
    CHECK(quoted.rate.points == Points(decimal("0.5")));
    check_mistakes({
        {first_down.c_str(), R"("down": {"percent": "10", "cash": "5"})", "members-conflict",
         "/scenarios/0/down"},
        {first_down.c_str(), R"("down": {"percent": "101"})", "out-of-range",
         "/scenarios/0/down/percent"},
        {first_down.c_str(), R"("down": {"amount": "-1"})", "out-of-range",
         "/scenarios/0/down/amount"},
        {"\"A third down\"", "\"Ten percent down\"", "scenario-repeated", "/scenarios/1/name"},
        {"\"months\": 12", "\"months\": 481", "not-a-whole-number", "/scenarios/0/months"},
        {first_rate.c_str(), R"("rate": {"note": "101"})", "not-a-rate", "/scenarios/0/rate/note"},
        {first_rate.c_str(), R"("rate": {"points": "x"})", "not-a-decimal",
         "/scenarios/0/rate/points"},
    });
}

TEST_CASE("Who asks: private figures are read and kept, out of range is said") {
    const Inquiry inquiry =
        read_sound("\"score\": 700", R"("score": 700, "income": {"monthly": "5000"},
                             "debts": {"monthly": "250.50"}, "cash": "31000", "household": 3)");
    CHECK(inquiry.monthly_income == money("5000"));
    CHECK(inquiry.monthly_debts == money("250.50"));
    CHECK(inquiry.cash == money("31000"));
    CHECK(inquiry.household == 3);
    check_mistakes({
        {"\"score\": 700", "\"score\": 299", "not-a-whole-number", "/score"},
        {"\"score\": 700", "\"score\": 700, \"household\": 21", "not-a-whole-number", "/household"},
        {"\"score\": 700", "\"score\": 700, \"appraised_value\": \"0\"", "out-of-range",
         "/appraised_value"},
        {"\"score\": 700", R"("score": 700, "income": {"monthly": "-5000"})", "out-of-range",
         "/income/monthly"},
        {"\"score\": 700", R"("score": 700, "debts": {"monthly": "-0.01"})", "out-of-range",
         "/debts/monthly"},
        {"\"score\": 700", R"("score": 700, "cash": "-1")", "out-of-range", "/cash"},
        {"\"score\": 700", R"("score": 700, "deposits_paid": "-1")", "out-of-range",
         "/deposits_paid"},
        {"\"buyer\": \"Somebody\"", "\"buyer\": \"\"", "text-empty", "/buyer"},
    });
}

TEST_CASE("All mistakes of an inquiry are found in one reading") {
    Findings findings;
    std::string text = changed("\"cabin\"", "\"cabn\"");
    text.replace(text.find("\"flue\""), 6, "\"flu\"");
    text.replace(text.find("\"short\""), 7, "\"long\"");
    static_cast<void>(read(text, findings));
    std::vector<std::string> paths;
    for (const Problem& problem : findings.problems()) paths.push_back(problem.path);
    CHECK(paths == std::vector<std::string>{"/plan", "/selections/1", "/scenarios/0/program"});
}

TEST_CASE("Where there is no home, its musts are held to no rule: the home alone is missing") {
    const std::string wishes = R"("wishes": [{"option": "stove", "rank": 1}])";
    const std::string musts = R"("wishes": [{"option": "stove", "must": true},
                                            {"option": "heater", "must": true}])";
    for (const char* missing : {R"("plan": "cabin", )", R"("elevation": "plain", )"}) {
        CAPTURE(missing);
        std::string text = changed(missing, "");
        text.replace(text.find(wishes), wishes.size(), musts);
        Findings findings;
        static_cast<void>(read(text, findings));
        REQUIRE(findings.problems().size() == 1);
        CHECK(name_of(findings.problems().front().id) == "member-missing");
    }
}
