// Scenarios whose rate is adjustable: from the files to the schedule.
#include <shown.hpp>

#include <quoin/answers/month_by_month.hpp>

#include "support/files.hpp"
#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

enum Way : std::size_t { fixed, seven, five, bought_down };

const apps::Loaded& moves_again() {
    static const auto loaded =
        apps::load_inquiry(QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/moves-again.json",
                           QUOIN_SOURCE_DIR "/rates");
    return *loaded;
}

std::string program_text(const std::string& members, const std::string& caps) {
    return R"({"format": "quoin/program/1", "id": "moving", "name": "Moving",
        "kind": "conventional",
        "terms_months": [360], )" +
           members +
           R"("adjustable": {"initial_months": 60, "reset_months": 6, "source": "invented",
        "caps": )" +
           caps + R"(}, "rules": {}})";
}

const char* const caps_2_1_5 = R"({"first": "2", "periodic": "1", "life": "5"})";
const char* const day_index =
    R"("index": {"name": "An index", "value": "4", "date": "2026-11-18"},)";

std::string sheet_text(const std::string& index, const std::string& margin,
                       const std::string& program = "moving") {
    return R"({"format": "quoin/rates/1", "id": "day", "date": "2026-11-20", "status": "sample",
        "good_through": "2026-12-04", "lender": {"name": "Nobody", "license": "none"}, )" +
           index + R"("ladders": [{"program": ")" + program +
           R"(", "months": 360, "lock_days": 60, )" + margin +
           R"("rungs": [{"rate": "5", "points": "1"}, {"rate": "6", "points": "0"}]}]})";
}

Findings found_in(const std::string& program, const std::string& sheet) {
    Findings findings;
    static_cast<void>(read_lending({json(program), json(sheet)}, findings));
    return findings;
}

Ids ids_in(const std::string& program, const std::string& sheet) {
    return problem_ids(found_in(program, sheet));
}

} // namespace

TEST_CASE("An adjustable scenario pays its note rate first, then index and margin within caps") {
    const Sitting sitting = moves_again().sitting();
    const MonthByMonthAnswer answer = month_by_month(sitting, five);
    REQUIRE(answer.scenario.available());
    REQUIRE(answer.scenario.terms.adjustable);
    const AdjustableAnswer& adjustable = *answer.scenario.terms.adjustable;
    CHECK(adjustable.initial == Months(60));
    CHECK(adjustable.index.value == Percent(decimal("3.96")));
    CHECK(adjustable.margin == Percent(decimal("2.75")));
    CHECK(adjustable.fully_indexed == rate("6.75")); // 6.71 to the nearest eighth
    CHECK(adjustable.ceiling == rate("11"));
    CHECK(answer.rows.at(59).rate == rate("6"));
    CHECK(answer.rows.at(60).rate == rate("6.75"));
    CHECK(answer.rows.back().balance == Money{});
    CHECK(answer.rows.at(60).interest ==
          monthly_interest(answer.rows.at(59).balance, rate("6.75")));
    // The composite rate is over the note rate, and so is the APR's part of it.
    CHECK(answer.scenario.cost_of_credit.apr.value() > rate("6.25"));
    CHECK(answer.way == RateWay::index_of_the_day);
}

TEST_CASE("The worst case moves by the whole of its caps and stops at the life cap") {
    const Sitting sitting = moves_again().sitting();
    const MonthByMonthAnswer worst = month_by_month(sitting, five, {{}, {}, true});
    CHECK(worst.way == RateWay::worst_case);
    const auto rate_of = [&](int payment) {
        return worst.rows.at(static_cast<std::size_t>(payment) - 1).rate;
    };
    CHECK(rate_of(60) == rate("6"));
    CHECK(rate_of(61) == rate("8"));
    CHECK(rate_of(67) == rate("9"));
    CHECK(rate_of(73) == rate("10"));
    CHECK(rate_of(79) == rate("11"));
    CHECK(rate_of(360) == rate("11"));
    Money largest;
    for (const MonthRow& row : worst.rows) largest = std::max(largest, row.payment);
    CHECK(largest == worst.scenario.terms.adjustable->largest_payment());
}

TEST_CASE("Mortgage insurance follows the schedule then in effect, 12 USC 4901(2)(B), (18)") {
    const Sitting sitting = moves_again().sitting();
    const auto last_insured = [&](const RunAs& run) {
        const MonthByMonthAnswer answer = month_by_month(sitting, five, run);
        int last = 0;
        for (const MonthRow& row : answer.rows) {
            if (row.insurance > Money{}) last = row.month;
        }
        const Money most =
            percent_of(answer.scenario.value, Percent(decimal("78")), Rounding::down);
        CHECK(answer.rows.at(static_cast<std::size_t>(last) - 1).balance <= most);
        CHECK(answer.rows.at(static_cast<std::size_t>(last) - 2).balance > most);
        return last;
    };
    // A higher rate pays principal down more slowly.
    CHECK(last_insured({}) < last_insured({{}, {}, true}));
    CHECK(last_insured({{}, {Percent(decimal("1"))}, false}) <= last_insured({}));
}

TEST_CASE("A given index is followed change by change, and its last value stays") {
    const Sitting sitting = moves_again().sitting();
    const RunAs run{{}, {Percent(decimal("4.5")), Percent(decimal("5"))}, false};
    const MonthByMonthAnswer answer = month_by_month(sitting, seven, run);
    CHECK(answer.way == RateWay::given_index);
    CHECK(answer.rows.at(83).rate == rate("6.25"));
    CHECK(answer.rows.at(84).rate == rate("7.25")); // 4.5 + 2.75
    CHECK(answer.rows.at(90).rate == rate("7.75")); // 5 + 2.75
    CHECK(answer.rows.back().rate == rate("7.75"));
}

TEST_CASE("Extra principal on an adjustable loan is reckoned on its own way") {
    const Sitting sitting = moves_again().sitting();
    for (const bool worst : {false, true}) {
        const MonthByMonthAnswer answer = month_by_month(sitting, five, {money("200"), {}, worst});
        REQUIRE(answer.saves);
        CHECK(answer.saves->interest_saved > Money{});
        CHECK(answer.rows.back().balance == Money{});
    }
}

TEST_CASE("A fixed scenario of the same buyer has nothing adjustable") {
    const Sitting sitting = moves_again().sitting();
    const MonthByMonthAnswer answer = month_by_month(sitting, fixed);
    CHECK(answer.way == RateWay::fixed);
    CHECK_FALSE(answer.scenario.terms.adjustable);
    REQUIRE(month_by_month(sitting, bought_down).scenario.buydown);
}

TEST_CASE("Rules that a program leaves out are those of the program it names") {
    const auto& programs = moves_again().desk.lending.programs;
    const LoanProgram& five_years = at(programs, index_of(programs, "conventional-5-6").value());
    const LoanProgram& plain = at(programs, index_of(programs, "conventional").value());
    const auto tables = [](const LoanProgram& program, Rule rule) {
        return program.rules[static_cast<std::size_t>(rule)].size();
    };
    CHECK(tables(five_years, Rule::loan_limit) == tables(plain, Rule::loan_limit));
    CHECK(tables(five_years, Rule::loan_limit) > 0);
    CHECK(tables(five_years, Rule::maximum_ltv) == 1); // its own
    CHECK(ids_in(program_text(R"("rules_of": "nowhere", )", caps_2_1_5),
                 sheet_text(day_index, R"("margin": "2.75", )")) == Ids{"name-unknown"});
}

TEST_CASE("What an adjustable ladder lacks, or has too much of, is said at its place") {
    const std::string program = program_text("", caps_2_1_5);
    CHECK(ids_in(program, sheet_text(day_index, R"("margin": "2.75", )")).empty());
    CHECK(ids_in(program, sheet_text(day_index, "")) == Ids{"member-missing"});
    CHECK(ids_in(program, sheet_text("", R"("margin": "2.75", )")) == Ids{"member-missing"});
    CHECK(ids_in(program, sheet_text(day_index, R"("margin": "-1", )")).front() == "out-of-range");
    CHECK(ids_in(program_text("", R"({"first": "2", "periodic": "-1", "life": "5"})"),
                 sheet_text(day_index, R"("margin": "2.75", )"))
              .front() == "out-of-range");
    // 5 + 5 leaves no room for a margin of 10.5.
    const Findings findings = found_in(program, sheet_text(day_index, R"("margin": "10.5", )"));
    REQUIRE(problem_ids(findings) == Ids{"adjustable-out-of-bounds"});
    CHECK(findings.problems().front().path == "/ladders/0");
    CHECK(findings.problems().front().line > 0);
}
