// All of the price paid down, a price of nothing, and closings in other decades: every question has
// an answer, and every figure its formula.
#include <shown.hpp>

#include <algorithm>

#include <quoin/answers/afford.hpp>
#include <quoin/answers/cash.hpp>
#include <quoin/answers/compare.hpp>
#include <quoin/answers/credit.hpp>
#include <quoin/answers/later.hpp>
#include <quoin/answers/month_by_month.hpp>
#include <quoin/answers/programs.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/recheck.hpp>
#include <quoin/answers/shift.hpp>
#include <quoin/answers/tour.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/render/workbook.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

std::unique_ptr<apps::Loaded> buyer(const std::string& name) {
    return apps::load_inquiry(QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/" + name + ".json",
                              QUOIN_SOURCE_DIR "/rates");
}

template <class Answer>
void check_told(const Answer& answer) {
    CHECK_FALSE(text_of(answer).empty());
    CHECK_FALSE(json_text_of(answer).empty());
}

/// How many scenarios can be had.
int ask_everything(const Sitting& sitting) {
    check_told(compare(sitting));
    check_told(quote(sitting));
    check_told(programs(sitting));
    check_told(later(sitting, {}, {}));
    check_told(shift(sitting, {}));
    check_told(credit(sitting, {money("1000"), 7}));
    const auto& scenarios = sitting.inquiry().scenarios;
    const bool from_cash = std::any_of(scenarios.begin(), scenarios.end(), [](const Scenario& s) {
        return s.down.by == DownPayment::By::cash;
    });
    if (!from_cash) check_told(afford(sitting, {})); // else a long search
    int had = 0;
    for (std::size_t s = 0; s < sitting.rules().size(); ++s) {
        CAPTURE(sitting.rules()[s].scenario.name);
        check_told(cash(sitting, s));
        check_told(month_by_month(sitting, s, {}));
        check_told(tour(sitting, s));
        const RecheckAnswer answer = recheck(sitting, s);
        check_told(answer);
        CHECK(answer.differences() == 0);
        if (!answer.scenario.available()) continue;
        ++had;
        CHECK_FALSE(workbook_of(answer).sheets.empty());
    }
    return had;
}

const char* const buyers[] = {"six-programs", "va-used-before", "moves-again"};

} // namespace

TEST_CASE("All of the price paid down leaves no loan, and every question its answer") {
    for (const char* name : buyers) {
        CAPTURE(name);
        const auto loaded = buyer(name);
        for (Scenario& scenario : loaded->inquiry.scenarios) {
            scenario.down = {DownPayment::By::percent, Percent(Decimal::whole(100)), {}};
        }
        CHECK(ask_everything(loaded->sitting()) > 0);
        for (Scenario& scenario : loaded->inquiry.scenarios) {
            scenario.down = {DownPayment::By::amount, {}, Money::dollars(5'000'000)};
        }
        CHECK(ask_everything(loaded->sitting()) > 0);
        for (Scenario& scenario : loaded->inquiry.scenarios) {
            scenario.down = {DownPayment::By::cash, {}, Money::dollars(5'000'000)};
        }
        CHECK(ask_everything(loaded->sitting()) > 0);
    }
}

TEST_CASE("Without a loan there is no payment, no rate of it and no share of it") {
    const auto loaded = buyer("six-programs");
    for (Scenario& scenario : loaded->inquiry.scenarios) {
        scenario.down = {DownPayment::By::percent, Percent(Decimal::whole(100)), {}};
    }
    for (const ScenarioAnswer& s : compare(loaded->sitting()).scenarios) {
        if (!s.available()) continue;
        CAPTURE(s.terms.name);
        CHECK(s.loan.is_zero());
        CHECK(s.monthly[MonthPart::principal_and_interest].is_zero());
        CHECK(s.monthly[MonthPart::mortgage_insurance].is_zero());
        CHECK(s.payments == 0);
        CHECK_FALSE(s.terms.apr);
        CHECK(s.cost_of_credit.total_interest_percentage == Percent{});
    }
}

TEST_CASE("Closings and days of other decades are answered or refused, each with its reason") {
    struct Row {
        const char* as_of;
        const char* closing;
    };
    for (const char* name : {"six-programs", "va-used-before"}) {
        for (const Row& row : {Row{"2026-11-24", "2031-12-20"}, Row{"2026-11-24", "2040-06-29"},
                               Row{"2031-12-01", "2031-12-20"}, Row{"2040-01-01", "2040-06-29"},
                               Row{"2020-06-01", "2020-12-20"}, Row{"2019-01-01", "2019-06-20"}}) {
            CAPTURE(name, row.as_of, row.closing);
            const auto loaded = buyer(name);
            loaded->inquiry.rates = loaded->inquiry.sheet(loaded->desk.lending)->id;
            loaded->inquiry.as_of = loaded->inquiry.contract = date(row.as_of);
            loaded->inquiry.closing = date(row.closing);
            const int had = ask_everything(loaded->sitting());
            if (date(row.as_of) >= date("2026-01-01")) CHECK(had > 0);
        }
    }
}

TEST_CASE("A home of no price at all is rechecked too") {
    const auto loaded = buyer("six-programs");
    Desk desk = loaded->desk;
    PriceBook& book = desk.book;
    Inquiry inquiry = loaded->inquiry;
    inquiry.selection.picks.clear();
    inquiry.selection.incentives.clear();
    Plan& plan = at(book.plans, inquiry.selection.plan);
    plan.base_price = Money{};
    for (Elevation& elevation : plan.elevations) elevation.price = Money{};
    for (Lot& lot : book.lots) lot.premium = Money{};
    const Sitting sitting(desk, inquiry);
    for (std::size_t s = 0; s < sitting.rules().size(); ++s) {
        const RecheckAnswer answer = recheck(sitting, s);
        CAPTURE(answer.scenario.terms.name);
        CHECK(answer.differences() == 0);
    }
}
