// How much home on figures alone: the same engine, held to the parts of a month by hand.
#include <shown.hpp>

#include <algorithm>

#include <quoin/answers/afford.hpp>
#include <quoin/loan/level_payment.hpp>

#include "apps/plain_afford.hpp"
#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Given figures() {
    return {{"income", "8400"},
            {"debts", "450"},
            {"rate", "6.25"},
            {"property-tax", "1.2"},
            {"insurance", "0.4"}};
}

apps::PlainCase plain(const Given& given) {
    return apps::plain_case(given, QUOIN_SOURCE_DIR "/rates", date("2026-11-24"));
}

} // namespace

TEST_CASE("Without mortgage insurance the month is the payment, a twelfth of tax and insurance") {
    Given given = figures();
    given.emplace("down", "20");
    given.emplace("program", "conventional");
    const apps::PlainCase made = plain(given);
    const Sitting sitting(made.desk, made.inquiry);
    const AffordScenario s = afford(sitting, {}).scenarios.front();
    REQUIRE(s.price);
    const Money price = *s.price;
    const Money loan = s.scenario.loan;
    CHECK(loan == Money::dollars(price.count() * 80 / 10'000)); // down to whole dollars
    const Money payment = level_payment(loan, rate("6.25"), Months(360));
    const Money tax = percent_of(price, Percent(decimal("0.1")), Rounding::half_away);
    CHECK(s.scenario.monthly[MonthPart::principal_and_interest] == payment);
    CHECK(s.scenario.monthly[MonthPart::property_tax] - tax <= Money::cents(5));
    CHECK(tax - s.scenario.monthly[MonthPart::property_tax] <= Money::cents(5));
    // 45% of 8,400 less debts.
    CHECK(s.scenario.monthly.total() <= money("3330"));
    CHECK(fits_at(sitting, 0, {}, price));
    for (int more = 1; more < 300; ++more) {
        CHECK_FALSE(fits_at(sitting, 0, {}, price + Money::dollars(more)));
    }
}

TEST_CASE("What is not given is assumed, and each assumption is told") {
    const apps::PlainCase made = plain(figures());
    CHECK(made.inquiry.scenarios.size() == 3); // conventional at 5 and 20%, FHA at 3.5%
    CHECK(made.inquiry.as_of == date("2026-11-24"));
    const auto told = [&](const std::string& words) {
        return std::any_of(
            made.assumptions.begin(), made.assumptions.end(),
            [&](const std::string& one) { return one.find(words) != std::string::npos; });
    };
    CHECK(told("closing costs of 2%"));
    CHECK(told("credit score of 740"));
    CHECK(told("--cash not given"));
    CHECK(told("sample figures"));
    CHECK_FALSE(told("property taxes of")); // that was given
}

TEST_CASE("A household's figures make the residual income test of a VA loan") {
    Given given = figures();
    given.emplace("program", "va");
    given.emplace("taxes", "3000");
    given.emplace("persons", "4");
    given.emplace("region", "south");
    given.emplace("square-feet", "2000");
    const apps::PlainCase made = plain(given);
    const AffordScenario s = afford(Sitting(made.desk, made.inquiry), {}).scenarios.front();
    REQUIRE(s.residual);
    CHECK(s.residual->tested());
    CHECK(s.residual->upkeep == money("280"));
    CHECK(s.residual_guide == money("1003"));
}
