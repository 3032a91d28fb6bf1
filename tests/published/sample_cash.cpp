// Cash to close of the sample forms of Regulation Z, line by line, from files through the answer.
//
// Source: 12 CFR 1026, Appendix H, forms H-24(B), Loan Estimate, and H-25(B), Closing Disclosure;
// letters are the sections of 1026.37(f), (g) and 1026.38(f), (g).
#include <shown.hpp>

#include <algorithm>

#include "support/disclosure_samples.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Money dollars_of(Money amount) { return to_dollars(amount, Rounding::half_away); }

/// A payer's lines of a section, each rounded as `shown` does.
template <class Shown>
Money section(const CashAnswer& answer, CostSection which, PaidBy payer, Shown shown) {
    Money sum;
    for (const CostLine& line : answer.costs) {
        if (line.section == which && line.paid_by == payer) sum += shown(line.amount);
    }
    return sum;
}

Money section(const CashAnswer& answer, CostSection which, PaidBy payer = PaidBy::buyer) {
    return section(answer, which, payer, [](Money amount) { return amount; });
}

Money all_of(const CashAnswer& answer, PaidBy payer, bool before_closing) {
    Money sum;
    for (const CostLine& line : answer.costs) {
        if (line.paid_by == payer && line.before_closing == before_closing) sum += line.amount;
    }
    return sum;
}

const PrepaidLine& prepaid_line(const CashAnswer& answer, Prepaid what) {
    const auto line = std::find_if(answer.prepaids.begin(), answer.prepaids.end(),
                                   [&](const PrepaidLine& each) { return each.what == what; });
    REQUIRE(line != answer.prepaids.end());
    return *line;
}

const EscrowLine& escrow_line(const ItemisedEscrow& escrow, MonthPart item) {
    const auto line = std::find_if(escrow.lines.begin(), escrow.lines.end(),
                                   [&](const EscrowLine& each) { return each.item == item; });
    REQUIRE(line != escrow.lines.end());
    return *line;
}

/// D of either form: A with its points, B and C.
Money loan_costs(const CashAnswer& answer) {
    return answer.scenario.cash[CashPart::points] + section(answer, CostSection::origination) +
           section(answer, CostSection::not_shopped_for) +
           section(answer, CostSection::shopped_for);
}

} // namespace

TEST_CASE("H-24(B), the loan and its projected payments in whole dollars") {
    const CashAnswer answer = loan_estimate().answer();
    const ScenarioAnswer& scenario = answer.scenario;
    REQUIRE(scenario.available());
    CHECK(scenario.price == money("180000"));
    CHECK(scenario.loan == money("162000"));
    CHECK(scenario.terms.rate == rate("3.875"));
    CHECK(scenario.terms.lock_ends == date("2013-04-16")); // rate lock until 4/16/2013
    CHECK(scenario.monthly[MonthPart::principal_and_interest] == money("761.78"));
    const Money insurance = dollars_of(scenario.monthly[MonthPart::mortgage_insurance]);
    const Money escrowed = dollars_of(scenario.monthly[MonthPart::property_tax] +
                                      scenario.monthly[MonthPart::homeowners_insurance]);
    CHECK(insurance == money("82"));
    CHECK(escrowed == money("206"));
    // 1026.37(o)(4)(i): where a part is rounded, the total is of the parts as printed.
    CHECK(dollars_of(scenario.monthly[MonthPart::principal_and_interest] + insurance + escrowed) ==
          money("1050"));
    CHECK(dollars_of(scenario.monthly.total()) == money("1050"));
    CHECK(dollars_of(scenario.monthly.total() - scenario.monthly[MonthPart::mortgage_insurance]) ==
          money("968"));
    CHECK(scenario.insurance.payments == 80); // years 1 to 7
}

TEST_CASE("H-24(B), loan costs: A 1,802, B 672, C 3,198, D 5,672") {
    const CashAnswer answer = loan_estimate().answer();
    CHECK(answer.scenario.cash[CashPart::points] == money("405")); // 0.25% of the loan
    CHECK(answer.scenario.cash[CashPart::points] + section(answer, CostSection::origination) ==
          money("1802"));
    CHECK(section(answer, CostSection::not_shopped_for) == money("672"));
    CHECK(section(answer, CostSection::shopped_for) == money("3198"));
    CHECK(loan_costs(answer) == money("5672"));
}

TEST_CASE("H-24(B), other costs: E 85, F 867, G 413, H 1,017, I 2,382, J 8,054, cash 16,054") {
    const CashAnswer answer = loan_estimate().answer();
    const CashToClose& cash = answer.scenario.cash;
    CHECK(section(answer, CostSection::taxes_and_government) == money("85"));
    CHECK(section(answer, CostSection::other) == money("1017"));
    // F: 6 months of 100.83, and 17.44 a day for 15 days.
    CHECK(prepaid_line(answer, Prepaid::insurance).count == 6);
    CHECK(prepaid_line(answer, Prepaid::insurance).amount == money("604.98"));
    CHECK(prepaid_line(answer, Prepaid::interest).count == 15);
    CHECK(prepaid_line(answer, Prepaid::interest).per_day == money("17.44"));
    CHECK(prepaid_line(answer, Prepaid::interest).amount == money("261.60"));
    const Money prepaids = dollars_of(money("604.98")) + dollars_of(money("261.60"));
    CHECK(prepaids == money("867"));
    CHECK(cash[CashPart::prepaid_bills] + cash[CashPart::prepaid_interest] == money("866.58"));
    // G: the days of the bills are not printed, and without them no account is figured. Two months
    // of each part of the month, as printed, to whole dollars line by line: 202 and 211.
    CHECK(cash[CashPart::escrow] == Money{});
    const Money insurance = answer.scenario.monthly[MonthPart::homeowners_insurance];
    const Money tax = answer.scenario.monthly[MonthPart::property_tax];
    CHECK(insurance == money("100.83"));
    CHECK(tax == money("105.30"));
    const Money escrow = dollars_of(insurance * 2) + dollars_of(tax * 2);
    CHECK(escrow == money("413"));
    // Sums of the form are sums of rounded lines (1026.37(o)(4)): I, J, cash to close.
    const Money other = section(answer, CostSection::taxes_and_government) + prepaids + escrow +
                        section(answer, CostSection::other);
    CHECK(other == money("2382"));
    CHECK(loan_costs(answer) + other == money("8054"));
    CHECK(loan_costs(answer) + other + cash[CashPart::down_payment] - cash[CashPart::deposits] ==
          money("16054"));
    // In cents the same lines come to 1.16 less: 0.42 in F and 0.74 in G were rounded up.
    CHECK(cash.to_close() + (insurance + tax) * 2 == money("16052.84"));
}

TEST_CASE("H-25(B), projected payments 1,050.26 and 967.91, with 356.13 of taxes and the like") {
    const CashAnswer answer = closing_disclosure().answer();
    REQUIRE(answer.scenario.available());
    const Monthly& month = answer.scenario.monthly;
    CHECK(month[MonthPart::mortgage_insurance] == money("82.35"));
    CHECK(answer.escrow.value().account.deposit == money("206.13"));
    CHECK(month[MonthPart::property_tax] + month[MonthPart::homeowners_insurance] ==
          money("206.13"));
    CHECK(month[MonthPart::association_dues] == money("150"));
    const Money escrowed_month = month.total() - month[MonthPart::association_dues];
    CHECK(escrowed_month == money("1050.26"));
    CHECK(escrowed_month - month[MonthPart::mortgage_insurance] == money("967.91"));
    CHECK(month.total() - month[MonthPart::principal_and_interest] -
              month[MonthPart::mortgage_insurance] ==
          money("356.13"));
    // The page on escrow: 2,473.56 of escrowed costs in a year, 1,800.00 of others.
    CHECK(answer.escrow->account.yearly == money("2473.56"));
    CHECK(month[MonthPart::association_dues] * 12 == money("1800"));
}

TEST_CASE("H-25(B), loan costs: A 1,802.00, B 236.55, C 2,655.50, D 4,694.05") {
    const CashAnswer answer = closing_disclosure().answer();
    CHECK(answer.scenario.cash[CashPart::points] + section(answer, CostSection::origination) ==
          money("1802.00"));
    CHECK(section(answer, CostSection::not_shopped_for) == money("236.55"));
    CHECK(section(answer, CostSection::shopped_for) == money("2655.50"));
    CHECK(loan_costs(answer) == money("4694.05"));
    CHECK(all_of(answer, PaidBy::buyer, true) == money("29.80"));
    CHECK(loan_costs(answer) - all_of(answer, PaidBy::buyer, true) == money("4664.25"));
    // The appraisal, 405, is the column "paid by others".
    CHECK(section(answer, CostSection::not_shopped_for, PaidBy::lender) == money("405"));
    CHECK(all_of(answer, PaidBy::lender, false) == money("405"));
}

TEST_CASE("H-25(B), other costs: E 85.00, F 2,120.80, H 2,400.00, what the seller pays 12,800.00") {
    const CashAnswer answer = closing_disclosure().answer();
    CHECK(section(answer, CostSection::taxes_and_government) == money("85.00"));
    CHECK(section(answer, CostSection::taxes_and_government, PaidBy::seller) == money("950.00"));
    CHECK(prepaid_line(answer, Prepaid::insurance).count == 12);
    CHECK(prepaid_line(answer, Prepaid::insurance).amount == money("1209.96"));
    CHECK(prepaid_line(answer, Prepaid::interest).count == 16);
    CHECK(prepaid_line(answer, Prepaid::interest).per_day == money("17.44"));
    CHECK(prepaid_line(answer, Prepaid::interest).amount == money("279.04"));
    CHECK(prepaid_line(answer, Prepaid::property_tax).amount == money("631.80"));
    const CashToClose& cash = answer.scenario.cash;
    CHECK(cash[CashPart::prepaid_bills] + cash[CashPart::prepaid_interest] == money("2120.80"));
    CHECK(section(answer, CostSection::other) == money("2400.00"));
    CHECK(all_of(answer, PaidBy::seller, false) == money("12800.00"));
    CHECK(all_of(answer, PaidBy::seller, true) == money("750.00"));
}

TEST_CASE("H-25(B), G: two months of each, 412.26, which the form lowers by a cent to 412.25") {
    const CashAnswer answer = closing_disclosure().answer();
    REQUIRE(answer.escrow.has_value());
    const ItemisedEscrow escrow = itemise(answer.escrow->account, answer.escrow->bills);
    const EscrowLine& insurance = escrow_line(escrow, MonthPart::homeowners_insurance);
    const EscrowLine& tax = escrow_line(escrow, MonthPart::property_tax);
    CHECK(insurance.months == 2);
    CHECK(insurance.monthly == money("100.83"));
    CHECK(insurance.total() == money("201.66"));
    CHECK(tax.months == 2);
    CHECK(tax.monthly == money("105.30"));
    CHECK(tax.total() == money("210.60"));
    // The form's aggregate adjustment is what brings its lines to its deposit, 412.25.
    CHECK(aggregate_adjustment(escrow.lines, money("412.25")) == money("-0.01"));
    // Ours is 412.26, with nothing to adjust: by the year's printed bills (2,473.56) two months are
    // 412.26 to the cent, and 12 CFR 1024.17(c)(1) allows that much. The form does not print what
    // its cent comes from; a year of 2,473.50 would have it.
    CHECK(escrow.adjustment == Money{});
    CHECK(answer.scenario.cash[CashPart::escrow] == money("412.26"));
    CHECK(part_of(answer.escrow->account.yearly, 6, Rounding::down) == money("412.26"));
}

TEST_CASE("H-25(B), I 5,018.05, J 9,712.10 and cash to close, as far as a quote goes") {
    const CashAnswer answer = closing_disclosure().answer();
    const CashToClose& cash = answer.scenario.cash;
    const Money cent = money("0.01"); // the form's aggregate adjustment, explained above
    const Money other = section(answer, CostSection::taxes_and_government) +
                        cash[CashPart::prepaid_bills] + cash[CashPart::prepaid_interest] +
                        cash[CashPart::escrow] + section(answer, CostSection::other);
    CHECK(other - cent == money("5018.05"));
    const Money all = loan_costs(answer) + other;
    CHECK(all - cent == money("9712.10"));
    CHECK(cash[CashPart::points] + cash[CashPart::closing_costs] + cash[CashPart::prepaid_bills] +
              cash[CashPart::prepaid_interest] + cash[CashPart::escrow] ==
          all);
    CHECK(all - cent - all_of(answer, PaidBy::buyer, true) == money("9682.30"));

    CHECK(cash[CashPart::down_payment] == money("18000"));
    CHECK(cash[CashPart::deposits] == money("10000"));
    CHECK(cash[CashPart::credits] == money("2500")); // of the seller
    // Outside: "adjustments and other credits", 1,035.04. They divide what was or will be paid for
    // a time that both own the home: city and town taxes to 14 April, 365.04, from the seller, less
    // dues from 15 April, 80.00; and a title company's rebate, 750.00. A price book's seller has
    // no such account with the buyer, and a quote no rebates of third parties.
    const Money adjustments = money("1035.04"); // 365.04 - 80.00 + 750.00
    const CalendarDay& closing = answer.calendar.back();
    CHECK(closing.date == date("2013-04-15"));
    CHECK(closing.amount - cent - adjustments == money("14147.26"));
    // What was paid when ordered is on the calendar before.
    CHECK(cash.to_close() - closing.amount == money("29.80"));
    // K, due from the borrower: the price, the costs at closing, the dues outside.
    CHECK(answer.scenario.price + all - cent - money("29.80") + money("80.00") ==
          money("189762.30"));
}
