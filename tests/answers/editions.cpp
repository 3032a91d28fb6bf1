// Beyond the last edition of a rule: what is used on is said, what is not known is refused.
#include <shown.hpp>

#include <algorithm>

#include <quoin/answers/afford.hpp>
#include <quoin/answers/programs.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/recheck.hpp>
#include <quoin/answers/sheet.hpp>
#include <quoin/answers/shift.hpp>
#include <quoin/render/answers.hpp>

#include "apps/plain_afford.hpp"
#include "prose.hpp"
#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

AffordAnswer fha_as_of(const char* day) {
    const Given figures = {
        {"income", "20000"}, {"cash", "300000"}, {"rate", "6.0"}, {"program", "fha"}};
    const apps::PlainCase made = apps::plain_case(figures, QUOIN_SOURCE_DIR "/rates", date(day));
    return afford(Sitting(made.desk, made.inquiry), {});
}

/// The example as it would stand on another day, its rate sheet and book kept.
struct Moved {
    Desk desk = six_programs().desk;
    Inquiry inquiry = six_programs().inquiry;

    Moved(const char* as_of, const char* closing) {
        inquiry.rates = inquiry.sheet(desk.lending)->id;
        inquiry.as_of = date(as_of);
        inquiry.contract = inquiry.as_of;
        inquiry.closing = date(closing);
    }
    [[nodiscard]] Sitting sitting() const { return {desk, inquiry}; }
    LoanProgram& program(const char* id) {
        return at(desk.lending.programs, index_of(desk.lending.programs, id).value());
    }
};

const char* const limit_used_on =
    "FHA, fixed rate: the program's loan limit is known only through December 31, 2026";

} // namespace

TEST_CASE("The FHA limit of 2026 binds in January 2027 as in December, and that is said") {
    // HUD Mortgagee Letter 2025-23: $541,287, at 3.5% down a price of $560,920.
    const AffordAnswer december = fha_as_of("2026-12-31");
    CHECK(december.scenarios.front().price == money("560920"));
    CHECK(text_of(december).find("is known only") == std::string::npos);
    const AffordAnswer january = fha_as_of("2027-01-02");
    CHECK(january.scenarios.front().price == money("560920"));
    CHECK(unwrapped(text_of(january)).find(limit_used_on) != std::string::npos);
    CHECK(json_text_of(january).find(limit_used_on) != std::string::npos);
}

TEST_CASE("Before the first edition nothing is had, and the reason is told") {
    const AffordScenario s = fha_as_of("2024-12-15").scenarios.front();
    CHECK_FALSE(s.price);
    REQUIRE(s.refusals.size() == 1);
    CHECK(s.refusals.front().why == Barred::rule_unknown);
    CHECK(s.refusals.front().gap ==
          ListGap{RuleList::loan_limit, ListGap::Kind::not_yet, date("2025-01-01")});
    CHECK(unwrapped(text_of(fha_as_of("2024-12-15")))
              .find("the program's loan limit is known only from January 1, 2025 on") !=
          std::string::npos);
}

TEST_CASE("Quote, sheet, programs and recheck say what is used beyond its end") {
    const Moved then("2027-01-02", "2027-06-14");
    const Sitting sitting = then.sitting();
    for (const std::string& text :
         {text_of(quote(sitting)), text_of(programs(sitting)), json_text_of(quote(sitting)),
          json_text_of(programs(sitting)), text_of(shift(sitting, {}))}) {
        CHECK(unwrapped(text).find(limit_used_on) != std::string::npos);
    }
    for (std::size_t s = 0; s < sitting.rules().size(); ++s) {
        const RecheckAnswer answer = recheck(sitting, s);
        const bool fha = answer.scenario.terms.program_id == "fha";
        if (!fha) continue;
        REQUIRE(answer.scenario.available());
        CHECK(unwrapped(text_of(answer)).find(limit_used_on) != std::string::npos);
        CHECK(unwrapped(text_of(answer)).find("through 12/31/2026; still used") !=
              std::string::npos);
        CHECK(answer.differences() == 0);
    }
    // In force, nothing is said.
    const Moved now("2026-12-31", "2027-06-14");
    CHECK(text_of(quote(now.sitting())).find("is known only") == std::string::npos);
}

TEST_CASE("Limits on the income that are not known are no limits that are met") {
    Moved then("2026-11-24", "2027-06-14");
    then.inquiry.monthly_income = money("9000");
    LoanProgram& fha = then.program("fha");
    fha.ratios.front().effective = date("2027-01-01");
    std::erase_if(then.inquiry.scenarios, [](const Scenario& s) { return s.program != "fha"; });
    const ListGap gap{RuleList::ratios, ListGap::Kind::not_yet, date("2027-01-01")};
    const AffordScenario s = afford(then.sitting(), {}).scenarios.front();
    CHECK_FALSE(s.price);
    REQUIRE(s.refusals.size() == 1);
    CHECK(s.refusals.front().gap == gap);
    const ShiftAnswer moved = shift(then.sitting(), {});
    CHECK(moved.scenarios.front().available()); // the month is what it is
    CHECK_FALSE(moved.scenarios.front().ratios);
    CHECK(moved.scenarios.front().ratios_unknown == std::vector{gap});
    CHECK(unwrapped(text_of(moved)).find("No income limits are shown") != std::string::npos);
    // Without an income nothing is held to them.
    then.inquiry.monthly_income.reset();
    then.inquiry.cash = money("200000");
    CHECK(afford(then.sitting(), {}).scenarios.front().price);
    // Used on, they are told.
    then.inquiry.monthly_income = money("9000");
    fha.ratios.front().effective.reset();
    fha.ratios.front().until = date("2026-11-24");
    fha.ratios.front().after = After::continues;
    const AffordAnswer used_on = afford(then.sitting(), {});
    REQUIRE(used_on.scenarios.front().price);
    CHECK(unwrapped(text_of(used_on))
              .find("for housing and debts is known only through November 23, 2026") !=
          std::string::npos);
}
