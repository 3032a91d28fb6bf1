// A lender credit for a higher rate: it pays closing costs, then prepaids; what is left reduces the
// principal under FHA and is lost elsewhere, and is told either way.
#include <shown.hpp>

#include <quoin/answers/scenario_answer.hpp>
#include <quoin/loan/level_payment.hpp>

#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Purchase with_costs(const char* program, const char* costs) {
    Purchase home(program);
    ClosingCost cost;
    cost.name = "Costs";
    cost.amount = money(costs);
    home.place.closing_costs.push_back(cost);
    home.place.escrow.prepaid_insurance_months = 12;
    return home;
}

Money prepaids_of(const LoanFigures& f) {
    return f.cash[CashPart::prepaid_interest] + f.cash[CashPart::prepaid_bills] +
           f.cash[CashPart::escrow];
}

} // namespace

TEST_CASE("A lender credit pays closing costs and then prepaids, never the down payment") {
    // Fannie Mae SEL-2018-03: lender contributions up to borrower-paid closing costs and prepaid
    // fees, never the down payment.
    Purchase home = with_costs("conventional", "3000");
    home.down_percent("20").quoted("7", "-1"); // 3,200 of 320,000
    const LoanFigures f = home.figures();
    CHECK(f.cash[CashPart::points] == money("-3200"));
    CHECK(f.lender_credit_without_use == Money{});
    CHECK(f.cash.needed() == f.cash[CashPart::down_payment] + prepaids_of(f) - money("200"));
    // A credit of another finds what is left to pay, closing costs first.
    home.facts.credits = {
        {"", CreditFrom::lender, money("9000"), {CreditUse::closing_costs, CreditUse::prepaids}}};
    const LoanFigures credited = home.figures();
    CHECK(credited.credits.by_use[CreditUse::closing_costs] == Money{});
    CHECK(credited.credits.by_use[CreditUse::prepaids] == prepaids_of(f) - money("200"));
    CHECK(credited.cash.needed() == f.cash[CashPart::down_payment]);
    CHECK(credited.cash[CashPart::credits] + credited.credits.without_use == money("9000"));
    // Smaller than the closing costs, it leaves a part of them.
    home.quoted("7", "-0.5");
    CHECK(home.figures().credits.by_use[CreditUse::closing_costs] == money("1400"));
}

TEST_CASE("Whether what is left of it reduces the principal is the program's own policy") {
    for (const char* program : {"conventional", "fha", "va"}) {
        CAPTURE(program);
        Purchase home = with_costs(program, "3000");
        home.down_percent("20").quoted("7", "-5");
        home.program.policy.credit_reduces_principal = false;
        const LoanFigures lost = home.figures();
        home.program.policy.credit_reduces_principal = true;
        const LoanFigures reduced = home.figures();
        CHECK(lost.cash[CashPart::principal_reduction] == Money{});
        CHECK(lost.lender_credit_without_use > money("9000"));
        CHECK(reduced.cash[CashPart::principal_reduction] == lost.lender_credit_without_use);
        CHECK(reduced.lender_credit_without_use == Money{});
        CHECK(reduced.cash.needed() == lost.cash.needed());
    }
}

TEST_CASE("What closing costs and prepaids leave of a lender credit is lost, and said") {
    for (const char* program : {"conventional", "va", "usda"}) {
        CAPTURE(program);
        Purchase home = with_costs(program, "3000");
        home.down_percent("20").quoted("7", "-5");
        const LoanFigures f = home.figures();
        REQUIRE(f.available());
        const Money credit = percent_of(f.loan, Percent(decimal("5")), Rounding::half_away);
        CHECK(f.lender_credit_without_use == credit - money("3000") - prepaids_of(f));
        CHECK(f.lender_credit_without_use > money("9000"));
        CHECK(f.cash[CashPart::points] == -(money("3000") + prepaids_of(f)));
        CHECK(f.cash[CashPart::principal_reduction] == Money{});
        CHECK(f.cash.needed() == f.cash[CashPart::down_payment] + f.cash[CashPart::upfront_fee]);
        CHECK(f.schedule.balance(0) == f.loan);
    }
}

TEST_CASE("Under FHA it reduces the principal at closing, on the same note and payment") {
    // HUD Reference Guide 2-06: remaining funds "must be applied to the borrower's principal
    // balance".
    Purchase home = with_costs("fha", "3000");
    home.down_percent("3.5").quoted("7");
    const LoanFigures plain = home.figures();
    home.quoted("7", "-2");
    const LoanFigures f = home.figures();
    REQUIRE(f.available());
    CHECK(f.loan == money("392755"));                     // 386,000 and 1.75% of it
    CHECK(f.cash[CashPart::points] == money("-7855.10")); // 2% of it
    const Money reduction = money("7855.10") - money("3000") - prepaids_of(f);
    CHECK(reduction > money("1000"));
    CHECK(f.cash[CashPart::principal_reduction] == reduction);
    CHECK(f.lender_credit_without_use == Money{});
    CHECK(f.cash.needed() == f.cash[CashPart::down_payment] + f.cash[CashPart::upfront_fee]);
    // Neither the loan nor its payment nor the premium is another.
    CHECK(f.loan == plain.loan);
    CHECK(f.ltv == plain.ltv);
    CHECK(f.monthly == plain.monthly);
    CHECK(f.schedule.payment() == level_payment(f.loan, f.rate, Months(360)));
    CHECK(f.schedule.terms().loan == f.loan);
    CHECK(f.schedule.at_closing() == reduction);
    CHECK(f.schedule.balance(0) == f.loan - reduction);
    CHECK(f.schedule.row(1).interest == monthly_interest(f.loan - reduction, f.rate));
    // It ends sooner, and so does the premium; until then it is the same, for prepayments do not
    // count (12 USC 1709(c)(2)(B)).
    CHECK(f.schedule.months() < 360);
    CHECK(f.insurance.months() == f.schedule.months());
    for (int month = 1; month <= f.schedule.months(); ++month) {
        if (f.insurance.in_month(month) != plain.insurance.in_month(month)) FAIL(month);
    }
    CHECK(f.schedule.total_interest() < plain.schedule.total_interest());
    CHECK(f.schedule.total_paid() == f.loan - reduction + f.schedule.total_interest());
    CHECK(f.spent_and_owed(0) == f.cash.needed() + f.loan - reduction);
    CHECK(with_extra(f.schedule, Money::dollars(100)).balance(0) == f.loan - reduction);
}

TEST_CASE("What is owed after a reduction is what the credit is figured on") {
    // 12 CFR 1026.18(b): the principal less the prepaid finance charge; a lender credit is no
    // negative finance charge.
    Purchase home = with_costs("fha", "3000");
    home.down_percent("3.5").quoted("7");
    const CostOfCredit plain = cost_of_credit(home.rules(), home.figures());
    home.quoted("7", "-2");
    const LoanFigures f = home.figures();
    const CostOfCredit cost = cost_of_credit(home.rules(), f);
    CHECK(cost.prepaid_finance_charge == plain.prepaid_finance_charge);
    CHECK(cost.amount_financed == plain.amount_financed - f.cash[CashPart::principal_reduction]);
    Money paid;
    for (const Money payment : disclosed_payments(f)) paid += payment;
    CHECK(cost.amount_financed + cost.finance_charge == paid);
    CHECK(cost.disclosed_principal_in_five_years == f.schedule.balance(0) - f.schedule.balance(60));
    CHECK(cost.disclosed_in_five_years == plain.disclosed_in_five_years);
}

TEST_CASE("A point less never takes more cash, and none of it is left untold") {
    for (const char* program : {"conventional", "fha"}) {
        Purchase home = with_costs(program, "2500");
        home.down_percent("10");
        Money before = money("1000000");
        for (int eighths = 8; eighths >= -48; --eighths) {
            const Decimal points = Decimal::billionths(eighths * (Decimal::one / 8));
            home.scenario.rate.points = Points(points);
            const LoanFigures f = home.figures();
            CAPTURE(program, eighths);
            REQUIRE(f.available());
            REQUIRE(f.cash.needed() <= before);
            REQUIRE(f.cash.needed() >= f.cash[CashPart::down_payment]);
            REQUIRE(f.cash[CashPart::points] - f.lender_credit_without_use ==
                    percent_of(f.loan, Percent(points), Rounding::half_away));
            before = f.cash.needed();
        }
    }
}
