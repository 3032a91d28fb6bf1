// What the buyer pays, told by several answers: each must say the same.
#include <shown.hpp>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/compare.hpp>
#include <quoin/answers/credit.hpp>
#include <quoin/answers/later.hpp>
#include <quoin/answers/month_by_month.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/home/rules.hpp>
#include <quoin/inquiry/asking.hpp>
#include <quoin/render/answers.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const apps::Loaded& moves_again() {
    static const auto loaded =
        apps::load_inquiry(QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/moves-again.json",
                           QUOIN_SOURCE_DIR "/rates");
    return *loaded;
}

constexpr std::size_t bought_down = 3; ///< of moves_again's scenarios

/// The example's scenarios, each paid ahead or bought down or both.
Inquiry paid_another_way(const apps::Loaded& loaded) {
    Inquiry inquiry = loaded.inquiry;
    for (std::size_t i = 0; i < inquiry.scenarios.size(); ++i) {
        Scenario& scenario = inquiry.scenarios[i];
        if (i % 3 != 1) scenario.extra_principal = Money::dollars(100 + 75 * static_cast<int>(i));
        if (i % 2 == 0) scenario.buydown = {Percent(decimal("1"))};
    }
    return inquiry;
}

Money local_of(const Monthly& monthly) {
    return monthly.total() - monthly[MonthPart::principal_and_interest] -
           monthly[MonthPart::mortgage_insurance];
}

Money paid_by_rows(const MonthByMonthAnswer& answer, std::size_t months) {
    const Money local = local_of(answer.scenario.monthly);
    Money paid = answer.scenario.cash.needed() + local * static_cast<int>(months);
    for (std::size_t i = 0; i < std::min(months, answer.rows.size()); ++i) {
        const MonthRow& row = answer.rows[i];
        paid += row.payment - row.from_buydown + row.insurance;
    }
    return paid;
}

void check_answers_agree(const apps::Loaded& loaded, const Inquiry& inquiry) {
    const Sitting sitting(loaded.desk, inquiry);
    const CompareAnswer compared = compare(sitting);
    const CreditAnswer credited = credit(sitting, {Money::dollars(8000), 5});
    for (std::size_t s = 0; s < compared.scenarios.size(); ++s) {
        const ScenarioAnswer& scenario = compared.scenarios[s];
        CAPTURE(scenario.terms.name);
        REQUIRE(scenario.available());
        const MonthByMonthAnswer rows = month_by_month(sitting, s);
        CHECK(static_cast<int>(rows.rows.size()) == scenario.payments);
        CHECK(rows.total_interest == scenario.total_interest);
        CHECK(rows.rows.back().payment == scenario.last_payment);
        CHECK(paid_by_rows(rows, 60) == scenario.paid_in_five_years);
        const auto term = static_cast<std::size_t>(scenario.terms.term.count());
        CHECK(paid_by_rows(rows, term) == scenario.paid_over_loan);
        CHECK(rows.rows.at(119).balance == scenario.balance_after_ten_years);
        const CreditMix& today = credited.scenarios[s].today;
        CHECK(today.cost_asked == scenario.paid_in_five_years + scenario.balance_after_five_years);
        const MonthRow& first = rows.rows.front();
        CHECK(today.monthly_now ==
              first.payment - first.from_buydown + first.insurance + local_of(scenario.monthly));
        const YearPoint& five = compared.curves[s].at(5);
        CHECK(five.paid == scenario.paid_in_five_years);
        CHECK(five.balance == scenario.balance_after_five_years);
        CHECK(five.spent_and_owed == five.paid + five.balance - local_of(scenario.monthly) * 60);
    }
}

} // namespace

TEST_CASE("The example bought down costs over the loan what the plain one costs that it equals") {
    const CompareAnswer answer = compare(moves_again().sitting());
    CHECK(answer.scenarios[0].paid_over_loan == money("1271924.60"));
    CHECK(answer.scenarios[bought_down].paid_over_loan == money("1271924.60"));
    CHECK(answer.scenarios[bought_down].paid_in_five_years ==
          answer.scenarios[0].paid_in_five_years);
}

TEST_CASE("Schedule, compare and credit say the same of what is paid") {
    for (const apps::Loaded* loaded : {&six_programs(), &moves_again()}) {
        check_answers_agree(*loaded, loaded->inquiry);
        check_answers_agree(*loaded, paid_another_way(*loaded));
    }
}

TEST_CASE("What an option adds over the years is the difference of two quotes, paid ahead or not") {
    Inquiry inquiry = paid_another_way(six_programs());
    const Sitting sitting(six_programs().desk, inquiry);
    REQUIRE(!inquiry.selection.picks.empty());
    const Pick pick = inquiry.selection.picks.front();
    const AddsAnswer added = adds(sitting, {pick});
    const QuoteAnswer now = quote(sitting);
    Inquiry less = inquiry;
    less.selection = without_option(sitting.book(), inquiry.selection, pick.option).selection;
    const QuoteAnswer without = quote(Sitting(six_programs().desk, less));
    for (std::size_t s = 0; s < now.scenarios.size(); ++s) {
        const Added& change = added.items.front().by_scenario[s];
        REQUIRE(change.available());
        CHECK(change.in_five_years ==
              without.scenarios[s].paid_in_five_years - now.scenarios[s].paid_in_five_years);
        CHECK(change.over_loan ==
              without.scenarios[s].paid_over_loan - now.scenarios[s].paid_over_loan);
    }
}

TEST_CASE("Now or later: a loan that ends later for the option is not charged the home's taxes") {
    Inquiry inquiry = six_programs().inquiry;
    for (Scenario& scenario : inquiry.scenarios) scenario.extra_principal = money("300");
    const Sitting sitting(six_programs().desk, inquiry);
    Findings none;
    const auto pick = asked_option(sitting.book(), "charging-outlet", none);
    REQUIRE(pick);
    const LaterAnswer answer = later(sitting, {*pick}, {});
    for (const LaterScenario& s : answer.items.front().scenarios) {
        for (const LaterPath& path : s.paths) {
            if (path.way != LaterWay::financed) continue;
            CAPTURE(s.terms.name);
            REQUIRE(path.months < s.terms.term.count());
            // Taxes of the months between the two loans' ends would be several hundred dollars.
            const std::size_t last = path.cost.size() - 1;
            CHECK(path.cost[last] - path.cost[last - 24] < money("300"));
        }
    }
}

TEST_CASE("Where extra principal is paid, the terms and the cautions say what follows it") {
    Inquiry inquiry = moves_again().inquiry;
    const auto told = [&] { return text_of(compare(Sitting(moves_again().desk, inquiry))); };
    const std::string words = "Extra principal of";
    CHECK(told().find(words) == std::string::npos);
    inquiry.scenarios.front().extra_principal = money("250");
    const std::string text = told();
    CHECK(text.find(words + " $250.00 a month (Fixed for 30 years) is optional") !=
          std::string::npos);
    CHECK(text.find("extra principal, optional") != std::string::npos);
    // What is disclosed stays as it was.
    const auto scenarios = compare(Sitting(moves_again().desk, inquiry)).scenarios;
    const ScenarioAnswer plain = compare(moves_again().sitting()).scenarios.front();
    CHECK(scenarios.front().terms.apr == plain.terms.apr);
    CHECK(scenarios.front().monthly == plain.monthly);
    CHECK(scenarios.front().cost_of_credit.total_of_payments ==
          plain.cost_of_credit.total_of_payments);
    CHECK(scenarios.front().total_interest < plain.total_interest);
}
