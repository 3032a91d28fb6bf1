// Rechecking what the loan costs: finance charge, APR, totals.
#include "ledger.hpp"

#include <quoin/loan/actuarial.hpp>

namespace quoin {
namespace {

constexpr int five_years = 60;

Ground of_rule(const char* source, int rounding = 0) {
    Ground ground = from("12 CFR 1026", source, Status::published);
    ground.rounding = rounding;
    return ground;
}

/// The APR to more decimals than it is shown with, so that it prices the loan to the cent.
Decimal long_apr(const RecheckCase& of, const CostOfCredit& cost) {
    ActuarialProblem problem;
    problem.advances = {{cost.amount_financed, 0, {}, 1}};
    int month = cost.first_period.months;
    for (const Money payment : loan_payments(of.f)) {
        if (payment > Money{}) {
            problem.payments.push_back({payment, month, {cost.first_period.odd_days, 30}, 1});
        }
        ++month;
    }
    return solve(problem).apr;
}

/// The ids of the costs that a condition holds for.
template <class Holds>
std::vector<std::string> costs_that(const RecheckCase& of, Holds holds) {
    std::vector<std::string> ids;
    int count = 0;
    for (const ClosingCost* cost : of.rules.closing_costs.all()) {
        const std::string id = "cost_" + std::to_string(++count);
        if (cost->paid_by == PaidBy::buyer && holds(*cost)) ids.push_back(id);
    }
    return ids;
}

void add_apr(const RecheckCase& of, const CostOfCredit& cost, Ledger& ledger) {
    if (!cost.apr) return;
    ledger.given("first_months", "whole months to the first payment", FigureUnit::months,
                 Decimal::whole(cost.first_period.months), of_rule("Appendix J(b)(5)"));
    ledger.given("odd_days", "odd days before them", FigureUnit::days,
                 Decimal::whole(cost.first_period.odd_days), of_rule("Appendix J(b)(5)"));
    ledger.given("apr", "APR, to eight decimals", FigureUnit::percent, long_apr(of, cost),
                 of_rule("Appendix J(b): the rate at which the next figure holds", 30));
    ledger.figure("worth_at_apr", "worth of all payments at the APR: the amount financed",
                  worth_at(figure("apr"), figure("first_months"), figure("odd_days")),
                  of_rule("Appendix J(b)", 30), cost.amount_financed);
}

} // namespace

void recheck_credit_cost(const RecheckCase& of, const CostOfCredit& cost, Ledger& ledger) {
    const int months = of.f.schedule.months();
    ledger.section(RecheckSheet::loan, "What the loan costs");
    std::vector<Formula> prepaid{
        greatest_of({figure("points"), number(0)}) - figure("sellers_points"),
        figure("prepaid_interest"),
        sum_of_figures(costs_that(of, [](const ClosingCost& c) { return c.finance_charge; }))};
    std::vector<Formula> loan_costs{greatest_of({figure("points"), number(0)}),
                                    sum_of_figures(costs_that(of, [](const ClosingCost& c) {
                                        return c.section == CostSection::origination ||
                                               c.section == CostSection::not_shopped_for ||
                                               c.section == CostSection::shopped_for;
                                    }))};
    if (ledger.has("upfront_fee")) {
        prepaid.push_back(figure("upfront_fee"));
        loan_costs.push_back(figure("upfront_fee"));
    }
    ledger.figure("prepaid_finance_charge", "prepaid finance charge", sum_of(std::move(prepaid)),
                  of_rule("1026.4, 1026.18"), cost.prepaid_finance_charge);
    const Formula owed = ledger.has("principal_reduction")
                             ? figure("loan") - figure("principal_reduction")
                             : figure("loan");
    ledger.figure("amount_financed", "amount financed", owed - figure("prepaid_finance_charge"),
                  of_rule("1026.18(b)"), cost.amount_financed);
    ledger.step("all_interest", "interest of all payments", FigureUnit::money,
                column_sum(ScheduleColumn::interest, 1, months), rounded_by(13));
    ledger.step("all_insurance", "mortgage insurance of all payments", FigureUnit::money,
                column_sum(ScheduleColumn::insurance, 1, months), {});
    ledger.figure("finance_charge", "finance charge",
                  figure("all_interest") + figure("all_insurance") +
                      figure("prepaid_finance_charge"),
                  of_rule("1026.4, 1026.18(d)"), cost.finance_charge);
    ledger.step("loan_costs", "loan costs of the buyer", FigureUnit::money,
                sum_of(std::move(loan_costs)), of_rule("1026.37(f)(1)-(3)"));
    ledger.figure("total_of_payments", "total of payments",
                  column_sum(ScheduleColumn::payment, 1, months) + figure("all_insurance") +
                      figure("loan_costs") + figure("prepaid_interest"),
                  of_rule("1026.38(o)(1)"), cost.total_of_payments);
    ledger.figure("total_interest_percentage", "total interest percentage", FigureUnit::percent,
                  rounded((figure("all_interest") + figure("prepaid_interest")) * number(100) /
                              figure("loan"),
                          3, Rounding::half_away),
                  of_rule("1026.37(l)(3)", 29), cost.total_interest_percentage.value());
    ledger.figure("paid_in_five_years", "paid in five years",
                  column_sum(ScheduleColumn::payment, 1, five_years) +
                      column_sum(ScheduleColumn::insurance, 1, five_years) + figure("loan_costs") +
                      figure("prepaid_interest"),
                  of_rule("1026.37(l)(1)"), cost.paid_in_five_years);
    ledger.figure("principal_in_five_years", "principal paid in five years",
                  column_sum(ScheduleColumn::principal, 1, five_years), of_rule("1026.37(l)(1)"),
                  cost.principal_in_five_years);
    add_apr(of, cost, ledger);
}

} // namespace quoin
