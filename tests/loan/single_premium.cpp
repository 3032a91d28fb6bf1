// Mortgage insurance paid up at closing: a percent of the base loan in cash, nothing a month, a
// finance charge.
#include <shown.hpp>

#include <quoin/answers/scenario_answer.hpp>

#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Purchase insured(const char* down_percent) {
    Purchase home("conventional");
    home.down_percent(down_percent);
    return home;
}

LoanFigures paid_up(Purchase home) {
    home.scenario.single_premium = true;
    return home.figures();
}

} // namespace

TEST_CASE("A single premium is a percent of the base loan in cash, and the month has none") {
    struct Row {
        const char* down;
        const char* premium; // of 400,000 less the down payment, by the plain sheet
    };
    for (const Row& row : {Row{"5", "9044"},
                           {"9.99", "8568.95"},
                           {"10", "5832"},
                           {"14.99", "5508.65"},
                           {"15", "3570"},
                           {"19.99", "3360.42"}}) {
        CAPTURE(row.down);
        const LoanFigures monthly = insured(row.down).figures();
        const LoanFigures single = paid_up(insured(row.down));
        REQUIRE(single.available());
        CHECK(single.cash.upfront_fee == money(row.premium));
        CHECK(single.cash.needed() - monthly.cash.needed() == money(row.premium));
        CHECK(single.loan == monthly.loan);
        CHECK(single.monthly.mortgage_insurance == Money{});
        CHECK(monthly.monthly.mortgage_insurance > Money{});
        CHECK(single.insurance.months() == 0);
    }
}

TEST_CASE("At 80 % of value there is no premium, and with no factor for the loan it is refused") {
    CHECK(paid_up(insured("20")).cash.upfront_fee == Money{});
    CHECK(paid_up(insured("20")).available());
    Purchase without = insured("5");
    without.sheet.single_premium.clear();
    CHECK(without.figures().available());
    CHECK(why_not(paid_up(without)) == std::vector{Barred::mi_not_offered});
    // Other programs have their own, whatever is asked for.
    Purchase fha("fha");
    fha.down_percent("3.5");
    CHECK(paid_up(fha).cash.upfront_fee == fha.figures().cash.upfront_fee);
    CHECK(paid_up(fha).monthly == fha.figures().monthly);
}

TEST_CASE("A single premium is a prepaid finance charge, but not what the seller pays of it") {
    // 12 CFR 1026.4(b)(5), insurance that protects the creditor; 1026.4(c)(5), comment 4(c)(5)-2.
    Purchase home = insured("10");
    home.scenario.single_premium = true;
    const auto cost = [&] { return cost_of_credit(home.rules(), home.figures()); };
    const CostOfCredit own = cost();
    const Money interest = home.figures().prepaid_interest.total();
    CHECK(own.prepaid_finance_charge == money("5832") + interest);
    CHECK(own.amount_financed == money("360000") - money("5832") - interest);
    CHECK(own.total_of_payments ==
          home.figures().schedule.total_paid() + money("5832") + interest); // 1026.38(o)(1)
    home.facts.credits = {{"seller", CreditFrom::seller, money("10000"), {CreditUse::upfront_fee}}};
    const CostOfCredit sellers = cost();
    CHECK(home.figures().credits.without_use == money("4168"));
    CHECK(own.finance_charge - sellers.finance_charge == money("5832"));
    CHECK(own.total_of_payments - sellers.total_of_payments == money("5832"));
    CHECK(sellers.apr.value() < own.apr.value());
    home.facts.credits.front().from = CreditFrom::lender;
    CHECK(cost().finance_charge == own.finance_charge);
    CHECK(cost().total_of_payments == own.total_of_payments);
}
