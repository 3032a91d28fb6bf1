// Figures spoilt on purpose, one promise at a time: each is found out.
#include <shown.hpp>

#include <quoin/exact/broken.hpp>

#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

TEST_CASE("Figures that break a promise are found out") {
    const Money cent = Money::cents(1);
    Purchase home("fha");
    home.down_percent("3.5").scenario.extra_principal = money("100");
    home.scenario.buydown = {Percent(decimal("1"))};
    const ScenarioRules rules = home.rules();
    const LoanFigures whole = home.figures();
    REQUIRE(whole.available());
    REQUIRE(whole.buydown);
    CHECK_NOTHROW(check(rules, whole));
    const auto broken = [&](auto damage) {
        LoanFigures f = whole;
        damage(f);
        CHECK_THROWS_AS(check(rules, f), Broken);
    };
    broken([&](LoanFigures& f) { f.cash[CashPart::down_payment] += cent; });
    broken([&](LoanFigures& f) { f.price -= cent; });
    broken([&](LoanFigures& f) { f.financed_fee += cent; });
    broken([&](LoanFigures& f) { f.upfront_fee += Money::dollars(1); });
    broken([&](LoanFigures& f) { f.cash[CashPart::credits] += Money::dollars(1'000'000); });
    broken([&](LoanFigures& f) { f.gross_ltv = Ltv(Decimal::whole(1)); });
    broken([&](LoanFigures& f) { f.rate = rate("6.375"); });
    broken([&](LoanFigures& f) { f.schedule = amortize({f.loan + cent, f.rate, Months(360)}); });
    broken([&](LoanFigures& f) { f.schedule = amortize({f.loan, f.rate, Months(180)}); });
    broken([&](LoanFigures& f) { f.cash[CashPart::principal_reduction] = cent; });
    broken([&](LoanFigures& f) { f.monthly[MonthPart::principal_and_interest] -= cent; });
    broken([&](LoanFigures& f) { f.insurance = MonthlyPremium({cent}, 361); });
    broken([&](LoanFigures& f) { f.paid_ahead->schedule = {}; });
    broken([&](LoanFigures& f) { f.buydown->note_payment += cent; });
    broken([&](LoanFigures& f) { f.cash[CashPart::buydown] += cent; });
}

TEST_CASE("A loan in cents breaks the promise of whole dollars") {
    Purchase home("fha");
    const ScenarioRules rules = home.down_percent("3.5").rules();
    LoanFigures f = home.figures();
    const Money cent = Money::cents(1);
    f.base_loan += cent;
    f.cash[CashPart::down_payment] -= cent;
    f.loan += cent;
    CHECK_THROWS_WITH(check(rules, f), "a program that lends whole dollars does");
}

TEST_CASE("A loan solved from the cash that takes more of it is found out") {
    Purchase home("conventional");
    const ScenarioRules rules = home.cash(money("120000")).rules();
    const LoanFigures f = home.figures();
    REQUIRE(f.available());
    CHECK_NOTHROW(check(rules, f));
    const ScenarioRules of_less = home.cash(f.cash.needed() - Money::cents(1)).rules();
    CHECK_THROWS_WITH(check(of_less, f),
                      "a loan solved from the cash takes no more of it than there is");
}
