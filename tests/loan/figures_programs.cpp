// Whole figures of one home under each program, worked out by hand or printed by an agency.
#include <shown.hpp>

#include <quoin/loan/level_payment.hpp>

#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Percent percent(const char* text) { return Percent(decimal(text)); }

/// What holds of any figures is promised where they are made; here is that there are some.
void check_whole(const LoanFigures& f) { REQUIRE(f.available()); }

} // namespace

TEST_CASE(
    "FHA: HUD's printed annual premium, 519.12 a year and 43.26 a month, from price to premium") {
    // HUD's premium calculation page: average balance 106,160.654, 0.50%, upfront factor 2.25%.
    // The page's loan, 106,605 at 7.5% with 745.40 a month, was found from the balances it prints.
    Purchase home("fha", "110000");
    home.base_loan("104260").quoted("7.5"); // 104,260 + 2,345 of the fee of 2,345.85
    BandTable& upfront = home.program.rules[static_cast<std::size_t>(Rule::upfront_fee)].front();
    upfront.values.front() = decimal("2.25");
    const LoanFigures f = home.figures();
    check_whole(f);
    CHECK(f.upfront_fee == money("2345.85"));
    CHECK(f.financed_fee == money("2345"));
    CHECK(f.cash[CashPart::upfront_fee] == money("0.85"));
    CHECK(f.loan == money("106605"));
    CHECK(f.monthly[MonthPart::principal_and_interest] == money("745.40"));
    CHECK(f.annual_percent == percent("0.50"));
    CHECK(f.monthly[MonthPart::mortgage_insurance] == money("43.26"));
}

TEST_CASE("FHA: upfront premium of 1.75% financed in whole dollars, its cents in cash") {
    // 1.75%: HUD 4000.1, Appendix 1.0; whole dollars, and up to 49.99 in cash: HUD 4155.2
    // (second-hand). 96.5%: 12 USC 1709(b)(9).
    struct Row {
        const char* price;
        const char* base;
        const char* fee;
        const char* financed;
        const char* cash;
    };
    for (const Row& row : {
             Row{"400000", "386000", "6755.00", "6755", "0"},
             Row{"400001", "386000", "6755.00", "6755", "0"},    // 96.5% is 386,000.965
             Row{"400002", "386001", "6755.02", "6755", "0.02"}, // .0175 rounds up
             Row{"412345.67", "397913", "6963.48", "6963", "0.48"},
             Row{"333333", "321666", "5629.16", "5629", "0.16"}, // 5,629.155: half away
             Row{"259067", "249999", "4374.98", "4374", "0.98"},
             Row{"1000.00", "965", "16.89", "16", "0.89"},
         }) {
        CAPTURE(row.price);
        const LoanFigures f = Purchase("fha", row.price).down_percent("3.5").figures();
        check_whole(f);
        CHECK(f.base_loan == money(row.base));
        CHECK(f.upfront_fee == money(row.fee));
        CHECK(f.financed_fee == money(row.financed));
        CHECK(f.cash[CashPart::upfront_fee] == money(row.cash));
    }
}

TEST_CASE("FHA: a premium paid in cash leaves the loan at its base and is not divided out") {
    Purchase home("fha");
    home.down_percent("3.5").scenario.finance_fee = false;
    const LoanFigures f = home.figures();
    check_whole(f);
    CHECK(f.loan == money("386000"));
    CHECK(f.financed_fee == Money{});
    CHECK(f.cash[CashPart::upfront_fee] == money("6755"));
    const LoanFigures financed = Purchase("fha").down_percent("3.5").figures();
    CHECK(financed.cash.needed() < f.cash.needed());
    // Base of the premium is the loan without the financed premium (12 USC 1709(c)(2)(B)): the two
    // differ by roundings alone.
    const Money apart =
        financed.monthly[MonthPart::mortgage_insurance] - f.monthly[MonthPart::mortgage_insurance];
    CHECK(apart <= Money::cents(1));
    CHECK(apart >= Money::cents(-1));
}

TEST_CASE("FHA: eleven years of premium at 90% of value, the whole term above") {
    // ML 2023-05; 12 USC 1709(c)(2)(B).
    const LoanFigures eleven = Purchase("fha").down_percent("10").figures();
    CHECK(eleven.ltv == Ltv(decimal("90")));
    CHECK(eleven.insurance.months() == 132);
    CHECK(eleven.insurance.paid_through(360) == eleven.insurance.paid_through(132));
    CHECK(eleven.insurance.in_month(133) == Money{});
    CHECK(eleven.insurance.in_month(132) > Money{});
    const LoanFigures term = Purchase("fha").base_loan("360001").figures();
    CHECK(term.ltv == Ltv(decimal("90"))); // cut to the hundredth of a percent, still 90.00
    CHECK(Purchase("fha").base_loan("360040").figures().ltv == Ltv(decimal("90.01")));
    CHECK(Purchase("fha").base_loan("360040").figures().insurance.months() == 360);
    // A shorter loan ends it with the loan.
    CHECK(Purchase("fha").years(15).down_percent("3.5").figures().insurance.months() == 180);
}

TEST_CASE("VA: funding fee at the 5 and 10% edges, to the dollar of the down payment") {
    // 38 USC 3729(b)(2): percent of the loan, by down payment as a share of the price.
    struct Row {
        EntitlementUse use;
        const char* down;
        const char* percent;
        const char* fee;
    };
    using Use = EntitlementUse;
    for (const Row& row : {
             Row{Use::first, "0", "2.15", "8600"},
             Row{Use::first, "19999", "2.15", "8170.02"}, // 380,001
             Row{Use::first, "20000", "1.50", "5700"},
             Row{Use::first, "39999", "1.50", "5400.02"},
             Row{Use::first, "40000", "1.25", "4500"},
             Row{Use::subsequent, "0", "3.30", "13200"},
             Row{Use::subsequent, "19999", "3.30", "12540.03"},
             Row{Use::subsequent, "20000", "1.50", "5700"},
             Row{Use::subsequent, "39999", "1.50", "5400.02"},
             Row{Use::subsequent, "40000", "1.25", "4500"},
             Row{Use::exempt, "0", "0", "0"},
             Row{Use::exempt, "40000", "0", "0"},
         }) {
        CAPTURE(static_cast<int>(row.use), row.down);
        Purchase home("va");
        home.down(row.down).scenario.use = row.use;
        const LoanFigures f = home.figures();
        check_whole(f);
        CHECK(f.upfront_percent == percent(row.percent));
        CHECK(f.upfront_fee == money(row.fee));
        CHECK(f.financed_fee == to_dollars(money(row.fee), Rounding::down));
        CHECK(f.cash[CashPart::upfront_fee] == f.upfront_fee - f.financed_fee);
        CHECK(f.monthly[MonthPart::mortgage_insurance] == Money{});
        CHECK(f.insurance.months() == 0);
        home.scenario.finance_fee = false;
        CHECK(home.figures().loan == f.base_loan);
        CHECK(home.figures().cash[CashPart::upfront_fee] == money(row.fee));
    }
}

TEST_CASE("VA: with nothing down and the fee financed, the loan is more than the home's value") {
    const LoanFigures f = Purchase("va", "333333").down("0").figures();
    check_whole(f);
    CHECK(f.ltv == Ltv(decimal("100")));
    CHECK(f.upfront_fee == money("7166.66")); // 7,166.6595
    CHECK(f.loan == money("340499"));
    CHECK(f.loan > f.value);
    CHECK(why_not(Purchase("va", "333333").appraised("333332").down("0").figures()) ==
          std::vector{Barred::ltv_over_maximum});
}

TEST_CASE("USDA: 150,000 / 0.99 = 151,515 with a fee of 1,515.15, and others") {
    // Method of USDA's guarantee-fee form (second-hand); 1%: 7 CFR 3555.107.
    struct Row {
        const char* base;
        const char* total;
        const char* fee;
        const char* cash;
    };
    for (const Row& row : {
             Row{"150000", "151515", "1515.15", "0.15"}, // 151,515.15 cut down
             Row{"99", "100", "1", "0"},
             Row{"198000", "200000", "2000", "0"},
             Row{"197999", "199998", "1999.98", "0.98"}, // 199,998.98: fee 1,999 financed
             Row{"240000", "242424", "2424.24", "0.24"},
         }) {
        CAPTURE(row.base);
        const LoanFigures f = Purchase("usda", row.base).down("0").figures();
        check_whole(f);
        CHECK(f.base_loan == money(row.base));
        CHECK(f.loan == money(row.total));
        CHECK(f.upfront_fee == money(row.fee));
        CHECK(f.cash[CashPart::upfront_fee] == money(row.cash));
    }
    Purchase cash("usda", "150000");
    cash.down("0").scenario.finance_fee = false;
    CHECK(cash.figures().loan == money("150000"));
    CHECK(cash.figures().cash[CashPart::upfront_fee] == money("1500")); // 1% of what is borrowed
}

TEST_CASE("USDA: the annual fee of a loan without interest, where averages are plain to see") {
    // 0.35% of the average scheduled balance in twelve parts: 7 CFR 3555.107 (second-hand).
    const LoanFigures f = Purchase("usda", "356400").down("0").quoted("0").figures();
    check_whole(f);
    REQUIRE(f.loan == money("360000")); // 356,400 / 0.99
    REQUIRE(f.monthly[MonthPart::principal_and_interest] == money("1000"));
    // The first twelve balances, 360,000 to 349,000, average 354,500; 0.35% is 1,240.75.
    CHECK(f.monthly[MonthPart::mortgage_insurance] == money("103.40"));
    CHECK(f.insurance.in_month(12) == money("103.40"));
    CHECK(f.insurance.in_month(13) == money("99.90")); // 342,500: 1,198.75
    CHECK(f.insurance.in_month(360) == money("1.90")); // 6,500: 22.75
    CHECK(f.insurance.months() == 360);
}

TEST_CASE(
    "Conventional: the loan of sample forms H-24(B) and H-25(B), insurance through payment 80") {
    // 12 CFR 1026, Appendix H: price 180,000, loan 162,000 at 3.875%; 761.78 a month; insurance
    // 82.35 (0.61% of 162,000) for 80 payments: the total of payments holds 6,588.00 of it.
    Purchase home("conventional", "180000");
    home.down("18000").quoted("3.875");
    home.sheet.mortgage_insurance.front().values = {decimal("0.61"), decimal("0.61"),
                                                    decimal("0.61"), decimal("0.61")};
    const LoanFigures f = home.figures();
    check_whole(f);
    CHECK(f.monthly[MonthPart::principal_and_interest] == money("761.78"));
    CHECK(f.monthly[MonthPart::mortgage_insurance] == money("82.35"));
    CHECK(f.insurance.months() == 80);
    CHECK(f.insurance.paid_through(360) == money("6588"));
    // 12 USC 4901(2), (18): the date of 78%, on request that of 80%; from the printed balances.
    CHECK(f.insurance_end.automatic == 80);
    CHECK(f.insurance_end.on_request == 68);
    CHECK(f.insurance_end.midpoint == 180);
    home.scenario.end_mi_on_request = true;
    CHECK(home.figures().insurance.months() == 68);
    // H-25(B): closing on 15 April, 17.44 a day for 16 days.
    home.closing = date("2013-04-15");
    const LoanFigures april = home.figures();
    CHECK(april.prepaid_interest.per_day == money("17.44"));
    CHECK(april.prepaid_interest.days == 16);
    CHECK(april.cash[CashPart::prepaid_interest] == money("279.04"));
}

TEST_CASE("Conventional: insurance starts above 80.00% of value, cut to two decimals") {
    // Coverage is asked for above 80%: Fannie Mae B7-1-02; the cut: B2-1.2-01, from memory.
    struct Row {
        const char* base;
        const char* ltv;
        const char* factor; ///< percent a year
    };
    for (const Row& row : {
             Row{"320000", "80", "0"},
             Row{"320039", "80", "0"}, // 80.00975
             Row{"320040", "80.01", "0.30"},
             Row{"340039", "85", "0.30"},
             Row{"340040", "85.01", "0.48"},
             Row{"360000", "90", "0.48"},
             Row{"360040", "90.01", "0.66"},
             Row{"380040", "95.01", "0.84"},
             Row{"388000", "97", "0.84"},
         }) {
        CAPTURE(row.base);
        const LoanFigures f = Purchase("conventional").base_loan(row.base).figures();
        check_whole(f);
        CHECK(f.ltv == Ltv(decimal(row.ltv)));
        CHECK(f.annual_percent == percent(row.factor));
        CHECK(f.monthly[MonthPart::mortgage_insurance] ==
              part_of(percent_of(f.base_loan, percent(row.factor), Rounding::half_away), 12,
                      Rounding::half_away));
        CHECK((f.insurance.months() > 0) == (f.annual_percent > Percent{}));
    }
}

TEST_CASE("Conventional: insurance never outlasts the midpoint of the term") {
    // 12 USC 4902(c): the first month after the midpoint at the latest.
    const LoanFigures steep = Purchase("conventional").down_percent("3").quoted("12").figures();
    CHECK(steep.insurance_end.automatic > 180);
    CHECK(steep.insurance.months() == 180);
    const LoanFigures flat = Purchase("conventional").down_percent("3").quoted("3").figures();
    CHECK(flat.insurance.months() == flat.insurance_end.automatic);
    CHECK(flat.insurance.months() < 180);
    const LoanFigures fifteen =
        Purchase("conventional").years(15).down_percent("3").quoted("12").figures();
    CHECK(fifteen.insurance.months() <= 90);
}

TEST_CASE("The base loan is cut to whole dollars, a program that lends cents keeps them") {
    Purchase home("conventional", "412345.67");
    CHECK(home.down_percent("20").figures().base_loan == money("329876")); // 329,876.536
    home.program.whole_dollars = false;
    CHECK(home.figures().base_loan == money("329876.53"));
    CHECK(home.down("82469.14").figures().base_loan == money("329876.53"));
}

TEST_CASE("A home paid in full has no payment, and an overpaid one none either") {
    for (const char* down : {"400000", "500000"}) {
        const LoanFigures f = Purchase("conventional").down(down).figures();
        REQUIRE(f.available());
        CHECK(f.base_loan == Money{});
        CHECK(f.cash[CashPart::down_payment] == money("400000"));
        CHECK(f.schedule.months() == 0);
        CHECK(f.monthly[MonthPart::principal_and_interest] == Money{});
        CHECK(f.insurance.months() == 0);
    }
}
