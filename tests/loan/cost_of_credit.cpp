// What the credit costs under a temporary buydown, by who puts its money up.
#include <shown.hpp>

#include <quoin/answers/cost_of_credit.hpp>
#include <quoin/loan/actuarial.hpp>

#include "seeded.hpp"
#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Purchase plain() {
    Purchase home("conventional");
    home.down_percent("20"); // 320,000 at 6.5%
    return home;
}

Purchase bought_down() {
    Purchase home = plain();
    home.scenario.buydown = {Percent(Decimal::whole(2)), Percent(Decimal::whole(1))};
    return home;
}

CostOfCredit cost_of(const Purchase& home) { return cost_of_credit(home.rules(), home.figures()); }

CostOfCredit given(Purchase home, CreditFrom from, Money amount) {
    home.facts.credits = {{"buydown", from, amount, {CreditUse::buydown}}};
    return cost_of(home);
}

/// The APR by Appendix J's equation, of payments of three heights and a last one.
Decimal composite(Money financed, FirstPeriod first, const std::array<Money, 3>& payments,
                  Money last) {
    const Ratio odd{first.odd_days, 30};
    ActuarialProblem problem;
    problem.advances = {{financed, 0, {}, 1}};
    problem.payments = {{payments[0], first.months, odd, 12},
                        {payments[1], first.months + 12, odd, 12},
                        {payments[2], first.months + 24, odd, 335},
                        {last, first.months + 359, odd, 1}};
    return solve(problem).apr;
}

} // namespace

TEST_CASE("A buydown that the buyer pays: a prepaid finance charge, three heights of payment") {
    // Source: 12 CFR 1026, comment 17(c)(1)-4. Level payments of 320,000 over 30 years at 4.5, 5.5
    // and 6.5%: 1,621.39, 1,816.92 and 2,022.62.
    const Purchase home = bought_down();
    const LoanFigures f = home.figures();
    REQUIRE(f.buydown.has_value());
    CHECK(f.buydown->total_subsidy() == (money("401.23") + money("205.70")) * 12);
    const CostOfCredit own = cost_of(home);
    const CostOfCredit none = cost_of(plain());
    CHECK(own.buydown.put_up == money("7283.16"));
    CHECK(own.prepaid_finance_charge - none.prepaid_finance_charge == money("7283.16"));
    CHECK(own.amount_financed == none.amount_financed - money("7283.16"));
    const std::vector<PaymentLevel> levels{
        {1, 12, money("1621.39")}, {13, 24, money("1816.92")}, {25, 360, money("2022.62")}};
    CHECK(own.levels == levels);
    // What it puts up comes back in the payments: the same in all, but earlier.
    CHECK(own.finance_charge == none.finance_charge);
    CHECK(own.total_of_payments == none.total_of_payments);
    CHECK(own.disclosed_in_five_years == none.disclosed_in_five_years);
    CHECK(own.disclosed_principal_in_five_years == none.disclosed_principal_in_five_years);
    CHECK(own.total_interest_percentage < none.total_interest_percentage);
    const Decimal apr = composite(own.amount_financed, own.first_period,
                                  {money("1621.39"), money("1816.92"), money("2022.62")},
                                  f.schedule.last_payment());
    REQUIRE(own.apr.has_value());
    CHECK(own.apr->millionths() == apr.billionths() / 1000);
    CHECK(*own.apr > none.apr.value());
}

TEST_CASE("A buydown that others pay outside of the note is in no disclosed figure") {
    // Source: 12 CFR 1026, comment 17(c)(1)-3.
    const CostOfCredit none = cost_of(plain());
    for (const CreditFrom from :
         {CreditFrom::builder, CreditFrom::seller, CreditFrom::lender, CreditFrom::program}) {
        const CostOfCredit theirs = given(bought_down(), from, money("7283.16"));
        CHECK(theirs.buydown.put_up == Money{});
        CHECK(theirs.levels.empty());
        CHECK(theirs.prepaid_finance_charge == none.prepaid_finance_charge);
        CHECK(theirs.finance_charge == none.finance_charge);
        CHECK(theirs.total_of_payments == none.total_of_payments);
        CHECK(theirs.total_interest_percentage == none.total_interest_percentage);
        CHECK(theirs.disclosed_in_five_years == none.disclosed_in_five_years);
        CHECK(theirs.apr == none.apr);
    }
    // An incentive that is put to it is the builder's money too.
    Purchase home = bought_down();
    home.home.given = {{Index<Incentive>(0), IncentiveUse::buydown, money("9000")}};
    CHECK(cost_of(home).apr == none.apr);
}

TEST_CASE("A buydown split between the parties shows the buyer's part alone") {
    // Comment 17(c)(1)-5. A fourth is the buyer's: 1,820.79 of 7,283.16; 401.23 / 4 = 100.3075 and
    // 205.70 / 4 = 51.425 off the payments.
    const CostOfCredit split = given(bought_down(), CreditFrom::seller, money("5462.37"));
    const CostOfCredit none = cost_of(plain());
    CHECK(split.buydown.put_up == money("1820.79"));
    CHECK(split.prepaid_finance_charge - none.prepaid_finance_charge == money("1820.79"));
    CHECK(split.buydown.in_month(1) == money("100.31"));
    CHECK(split.buydown.in_month(12) == money("100.31"));
    CHECK(split.buydown.in_month(13) == money("51.43"));
    CHECK(split.buydown.in_month(24) == money("51.43"));
    CHECK(split.buydown.in_month(25) == Money{});
    CHECK(split.buydown.through(18) == money("1512.30")); // 12 x 100.31 + 6 x 51.43
    CHECK(split.levels.front().payment == money("1922.31"));
    CHECK(split.apr.value() > none.apr.value());
    CHECK(split.apr.value() < cost_of(bought_down()).apr.value());
}

TEST_CASE(
    "However a buydown is split, the finance charge is what is paid over the amount financed") {
    Seeded seeded(17);
    std::optional<Rate> before;
    for (int i = 0; i < 40; ++i) {
        const Money seller = money("7283.16") - money("182.08") * i;
        const CostOfCredit cost = given(bought_down(), CreditFrom::seller, seller);
        Purchase home = bought_down();
        home.facts.credits = {{"buydown", CreditFrom::seller, seller, {CreditUse::buydown}}};
        Money paid;
        for (const Money payment : disclosed_payments(home.figures())) paid += payment;
        CHECK(cost.finance_charge == paid - cost.amount_financed);
        // To the cent of each month it is the same in all, whoever pays.
        const Money apart = cost.finance_charge - cost_of(plain()).finance_charge;
        CHECK(apart <= money("0.12"));
        CHECK(apart >= money("-0.12"));
        if (before) CHECK(*cost.apr > *before);
        before = cost.apr;
    }
}
