// Value and contributions: a low appraisal, the caps of interested parties, what the month sums to.
#include <shown.hpp>

#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Percent percent(const char* text) { return Percent(decimal(text)); }

/// Closing costs of this much, for credits to pay.
void add_costs(Purchase& home, const char* amount) {
    ClosingCost cost;
    cost.name = "Costs";
    cost.amount = money(amount);
    home.place.closing_costs.push_back(cost);
}

} // namespace

TEST_CASE("The value is the lesser of price and appraisal, a high appraisal changes nothing") {
    // 12 USC 4901(12): the lesser of contract price and appraised value.
    const LoanFigures as_priced = Purchase("conventional").down_percent("20").figures();
    for (const char* value : {"400000", "400000.01", "900000"}) {
        const LoanFigures f =
            Purchase("conventional").appraised(value).down_percent("20").figures();
        CHECK(f.value == money("400000"));
        CHECK(f.base_loan == as_priced.base_loan);
        CHECK(f.cash.needed() == as_priced.cash.needed());
    }
}

TEST_CASE("A low appraisal: percent down is of the value, the gap is paid in cash") {
    const LoanFigures f = Purchase("conventional").appraised("380000").down_percent("20").figures();
    REQUIRE(f.available());
    CHECK(f.price == money("400000"));
    CHECK(f.value == money("380000"));
    CHECK(f.base_loan == money("304000")); // 80% of the value
    CHECK(f.ltv == Ltv(decimal("80")));
    CHECK(f.insurance.months() == 0);
    CHECK(f.cash[CashPart::down_payment] == money("96000")); // 76,000 and the 20,000 between
    CHECK(f.down_percent == percent("24")); // of the price, as the funding fee reads it
}

TEST_CASE("A low appraisal: an amount down keeps the loan, and so raises its LTV") {
    Purchase home("conventional");
    home.down("80000");
    CHECK(home.figures().insurance.months() == 0);
    const LoanFigures low = home.appraised("390000").figures();
    CHECK(low.base_loan == money("320000"));
    CHECK(low.ltv == Ltv(decimal("82.05"))); // 82.0512...
    CHECK(low.insurance.months() > 0);
    // Insurance ends by the value, not by the price (12 USC 4901(12)).
    CHECK(low.insurance_end.on_request > 0);
    CHECK(low.schedule.balance(low.insurance_end.on_request) <= money("312000"));
    CHECK(low.schedule.balance(low.insurance_end.on_request - 1) > money("312000"));
    CHECK(low.schedule.balance(low.insurance_end.automatic) <= money("304200"));
    CHECK(low.schedule.balance(low.insurance_end.automatic - 1) > money("304200"));
    // Local costs stay with the price.
    CHECK(low.local.dwelling_value == money("320000"));
}

TEST_CASE("Contributions up to the cap pay, above it they find no use") {
    // Fannie Mae B3-4.1-02: 9, 6 and 3% of the lower of price and value, by LTV (second-hand).
    struct Row {
        const char* down; ///< percent
        const char* cap;
        const char* used;
    };
    for (const Row& row : {
             Row{"25", "9", "36000"},
             Row{"24.99", "6", "24000"},
             Row{"10", "6", "24000"},
             Row{"9.99", "3", "12000"},
             Row{"3", "3", "12000"},
         }) {
        CAPTURE(row.down);
        Purchase home("conventional");
        add_costs(home, "60000");
        home.given(IncentiveUse::closing_costs, "50000");
        const LoanFigures f = home.down_percent(row.down).figures();
        REQUIRE(f.contribution_cap == percent(row.cap));
        CHECK(f.cash[CashPart::credits] == money(row.used));
        CHECK(f.credits.over_cap == money("50000") - money(row.used));
        CHECK(f.credits.interested_parties == money(row.used));
    }
}

TEST_CASE("The cap is of the value where the appraisal is low, cut to the cent") {
    Purchase home("conventional");
    add_costs(home, "60000");
    home.given(IncentiveUse::closing_costs, "50000");
    home.appraised("333333.33").down_percent("5");
    CHECK(home.figures().cash[CashPart::credits] == money("9999.99")); // 9,999.9999
}

TEST_CASE("FHA caps 6%, VA 4% of concessions only, USDA 6%") {
    // HUD 4000.1 (second-hand); VA 26-7 chapter 8 (second-hand); HB-1-3555: from memory.
    for (const auto& [program, used] : {std::pair("fha", "24000"), {"usda", "24000"}}) {
        CAPTURE(program);
        Purchase home(program);
        add_costs(home, "60000");
        home.given(IncentiveUse::closing_costs, "50000");
        CHECK(home.down_percent("5").figures().cash[CashPart::credits] == money(used));
    }
    // VA does not count the buyer's closing costs among concessions.
    Purchase va("va");
    add_costs(va, "60000");
    va.given(IncentiveUse::closing_costs, "50000");
    const LoanFigures f = va.down("0").figures();
    CHECK(f.cash[CashPart::credits] == money("50000"));
    CHECK(f.credits.interested_parties == Money{});
    CHECK(f.contribution_cap == percent("4"));
}

TEST_CASE("What a cap is of, and what counts towards it, is the program's own policy") {
    Purchase home("conventional");
    add_costs(home, "60000");
    home.given(IncentiveUse::closing_costs, "50000");
    home.appraised("333333.33").down_percent("5");
    home.program.policy.cap_by_price = true;
    CHECK(home.figures().cash[CashPart::credits] == money("12000")); // 3% of 400,000
    home.program.policy.cap_on_concessions = true;
    CHECK(home.figures().cash[CashPart::credits] == money("50000")); // none is a concession
}

TEST_CASE("A credit pays no more than there is to pay, points before costs") {
    Purchase home("conventional");
    add_costs(home, "3000");
    home.quoted("6.5", "1").down_percent("25"); // points 3,000
    home.given(IncentiveUse::points, "4000");
    home.given(IncentiveUse::closing_costs, "5000");
    const LoanFigures f = home.figures();
    CHECK(f.credits.by_use[CreditUse::points] == money("3000"));
    CHECK(f.credits.by_use[CreditUse::closing_costs] == money("3000"));
    CHECK(f.credits.by_use[CreditUse::prepaids] ==
          std::min(money("2000"), f.cash[CashPart::prepaid_interest] +
                                      f.cash[CashPart::prepaid_bills] + f.cash[CashPart::escrow]));
    CHECK(f.credits.over_cap == Money{});
    CHECK(f.cash[CashPart::credits] + f.credits.without_use == money("9000"));
    CHECK(f.cash.needed() >= f.cash[CashPart::down_payment]);
}

TEST_CASE("The month is the sum of its parts, the first year with tax on land alone") {
    Purchase home("conventional");
    home.place.levies = {{"County", decimal("10")}};
    home.place.districts = {{"Drains", std::nullopt, decimal("1")}, {"Lights", money("120"), {}}};
    home.place.land_only = LandOnly{percent("20"), 12};
    home.place.premiums[MonthPart::flood_insurance] = money("600");
    home.place.premiums[MonthPart::wind_insurance] = money("60");
    home.place.dues = {{"A", money("40")}, {"B", money("5.50")}};
    home.home.flood_zone = true;
    const LoanFigures f = home.down_percent("10").figures();
    REQUIRE(f.available());
    CHECK(f.monthly[MonthPart::property_tax] == money("333.33"));     // 10 mills of 400,000 / 12
    CHECK(f.monthly[MonthPart::district_charges] == money("43.33"));  // 400 + 120
    CHECK(f.monthly[MonthPart::homeowners_insurance] == money("80")); // 3 per thousand of 320,000
    CHECK(f.monthly[MonthPart::flood_insurance] == money("50"));
    CHECK(f.monthly[MonthPart::wind_insurance] == money("5"));
    CHECK(f.monthly[MonthPart::association_dues] == money("45.50"));
    CHECK(f.monthly[MonthPart::mortgage_insurance] == money("144")); // 0.48% of 360,000
    const Money parts = f.monthly[MonthPart::principal_and_interest] + money("144") +
                        money("333.33") + money("43.33") + money("80") + money("50") + money("5") +
                        money("45.50");
    CHECK(f.monthly.total() == parts);
    CHECK(f.first_year[MonthPart::property_tax] == money("66.67"));     // on 80,000
    CHECK(f.first_year[MonthPart::district_charges] == money("16.67")); // 80 + 120
    CHECK(f.first_year[MonthPart::principal_and_interest] ==
          f.monthly[MonthPart::principal_and_interest]);
    const Monthly apart = f.monthly - f.first_year;
    CHECK(apart.total() == money("293.32"));
    // Sixty months: cash, the loan, insurance, and the settled local parts.
    const Money local = parts - f.monthly[MonthPart::principal_and_interest] - money("144");
    CHECK(f.paid_in_five_years() == f.cash.needed() + f.schedule.paid_through(60) +
                                        f.insurance.paid_through(60) + local * 60);
    CHECK(f.paid_over_loan() ==
          f.cash.needed() + f.schedule.total_paid() + f.insurance.paid_through(360) + local * 360);
    // Where no bill is ever on land alone, the first year is as all the others.
    home.place.land_only.reset();
    CHECK(home.figures().first_year == home.figures().monthly);
    home.home.flood_zone = false;
    CHECK(home.figures().monthly[MonthPart::flood_insurance] == Money{});
}
