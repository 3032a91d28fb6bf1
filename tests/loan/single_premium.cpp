// Mortgage insurance paid up at closing: a percent of the base loan, in cash or in the loan,
// nothing a month, a finance charge.
#include <shown.hpp>

#include <quoin/answers/scenario_answer.hpp>
#include <quoin/lending/reading.hpp>
#include <quoin/text/reader.hpp>

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

Purchase financed(const char* down_percent) {
    Purchase home = insured(down_percent);
    home.scenario.single_premium = true;
    home.scenario.finance_premium = true;
    return home;
}

/// A table by LTV: points adjusted, or the most that is lent.
BandTable by_ltv(const char* rows) {
    Findings findings;
    std::string text = R"({"status": "sample", "source": "invented",
        "value": "points", "dimensions": ["ltv"], "rows": )";
    text += rows;
    text += '}';
    const Document table = json(text);
    Reader reader(table.root, Path{}, findings);
    BandTable read = read_band_table(reader);
    if (!findings.none()) throw Refused(std::move(findings));
    return read;
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
        CHECK(single.cash[CashPart::upfront_fee] == money(row.premium));
        CHECK(single.cash.needed() - monthly.cash.needed() == money(row.premium));
        CHECK(single.loan == monthly.loan);
        CHECK(single.monthly[MonthPart::mortgage_insurance] == Money{});
        CHECK(monthly.monthly[MonthPart::mortgage_insurance] > Money{});
        CHECK(single.insurance.months() == 0);
    }
}

TEST_CASE("At 80% of value there is no premium, and with no factor for the loan it is refused") {
    CHECK(paid_up(insured("20")).cash[CashPart::upfront_fee] == Money{});
    CHECK(paid_up(insured("20")).available());
    Purchase without = insured("5");
    without.sheet.single_premium.clear();
    CHECK(without.figures().available());
    CHECK(why_not(paid_up(without)) == std::vector{Barred::mi_not_offered});
    // Other programs have their own, whatever is asked for.
    Purchase fha("fha");
    fha.down_percent("3.5");
    CHECK(paid_up(fha).cash[CashPart::upfront_fee] == fha.figures().cash[CashPart::upfront_fee]);
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

TEST_CASE("A financed premium is in the loan and its payment, its cents in cash") {
    const LoanFigures cash = paid_up(insured("9.99"));
    const LoanFigures loan = financed("9.99").figures();
    REQUIRE(loan.available());
    CHECK(loan.upfront_fee == money("8568.95")); // 2.38% of 360,040
    CHECK(loan.financed_fee == money("8568"));
    CHECK(loan.cash[CashPart::upfront_fee] == money("0.95"));
    CHECK(loan.base_loan == money("360040"));
    CHECK(loan.loan == money("368608"));
    CHECK(loan.schedule.terms().loan == loan.loan);
    CHECK(loan.monthly[MonthPart::principal_and_interest] >
          cash.monthly[MonthPart::principal_and_interest]);
    CHECK(loan.monthly[MonthPart::mortgage_insurance] == Money{});
    CHECK(cash.cash.needed() - loan.cash.needed() == money("8568") +
                                                         cash.cash[CashPart::prepaid_interest] -
                                                         loan.cash[CashPart::prepaid_interest]);
    // At 80% there is none to finance, and another program's fee is not touched.
    CHECK(financed("20").figures().loan == money("320000"));
    Purchase fha("fha");
    fha.down_percent("3.5");
    fha.scenario.single_premium = fha.scenario.finance_premium = true;
    fha.scenario.finance_fee = false;
    CHECK(fha.figures().financed_fee == Money{});
}

TEST_CASE("The gross LTV of a financed premium is held against the most that is lent") {
    // Fannie Mae B7-1-04 (12/15/2021): the LTV with the premium may not exceed the most that is
    // lent; the base LTV, without it, decides what is insured.
    const LoanFigures most = financed("6").figures(); // 376,000 and 2.38%: 384,948
    REQUIRE(most.available());
    CHECK(most.ltv.value() == decimal("94"));
    CHECK(most.gross_ltv.value() == decimal("96.23"));
    CHECK(most.upfront_percent == Percent(decimal("2.38"))); // of 94, not of 96.23%
    const LoanFigures over = financed("5").figures();        // 380,000 and 9,044: 97.26%
    REQUIRE(why_not(over) == std::vector{Barred::ltv_over_maximum});
    CHECK(over.refusals.front().found == money("389044"));
    CHECK(over.refusals.front().limit == money("388000"));
    CHECK(over.refusals.front().with_premium);
    CHECK(paid_up(insured("5")).available());
    // So is the limit of the area held against the loan with the premium.
    Purchase home("conventional", "950000");
    home.scenario.single_premium = true;
    home.base_loan("825000");
    REQUIRE(home.figures().available());
    home.scenario.finance_premium = true; // 1.62%: 838,365
    CHECK(why_not(home.figures()) == std::vector{Barred::loan_over_limit});
}

TEST_CASE("Adjustments and the contribution cap go by the gross LTV of a financed premium") {
    // B7-1-04: price adjustments are based on it; B2-1.2-01: with financed mortgage insurance the
    // LTV is of the loan with it.
    Purchase home = financed("10.5"); // 358,000 and 1.62%: 363,799, 90.94%
    home.by_note("6.25");
    home.sheet.adjustments.push_back(
        {{"conventional"},
         by_ltv(R"([{"ltv": "<= 90", "value": "0.5"}, {"ltv": "> 90", "value": "0.875"}])")});
    const LoanFigures f = home.figures();
    REQUIRE(f.available());
    CHECK(f.ltv.value() == decimal("89.5"));
    CHECK(f.gross_ltv.value() == decimal("90.94"));
    CHECK(f.points == Points(decimal("1.125")));
    CHECK(f.contribution_cap == Percent(decimal("3")));
    home.scenario.finance_premium = false;
    CHECK(home.figures().points == Points(decimal("0.75")));
    CHECK(home.figures().contribution_cap == Percent(decimal("6")));
}

TEST_CASE("A financed premium is a finance charge all the same") {
    const Purchase home = financed("10");
    const LoanFigures f = home.figures();
    const CostOfCredit cost = cost_of_credit(home.rules(), f);
    CHECK(cost.prepaid_finance_charge == money("5832") + f.prepaid_interest.total());
    CHECK(cost.amount_financed == money("360000") - f.prepaid_interest.total());
}
