// Rechecking what the loan costs: finance charge, APR, totals.
#include "ledger.hpp"

#include <quoin/loan/actuarial.hpp>

namespace quoin {
namespace {

constexpr int five_years = 60;

Ground of_rule(GroundSource source, int rounding = 0) {
    return from("12 CFR 1026", std::move(source), Status::published, rounding);
}

/// The APR to more decimals than it is shown with, so that it prices the loan to the cent.
Decimal long_apr(const RecheckCase& of, const CostOfCredit& cost) {
    ActuarialProblem problem;
    problem.advances = {{cost.amount_financed, 0, {}, 1}};
    int month = cost.first_period.months;
    for (const Money payment : disclosed_payments(of.f)) {
        if (payment > Money{}) {
            problem.payments.push_back({payment, month, {cost.first_period.odd_days, 30}, 1});
        }
        ++month;
    }
    return solve(problem).apr;
}

/// The ids of the costs that a condition holds for.
std::vector<std::string> costs_that(const RecheckCase& of, auto holds) {
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
    ledger.given(FigureCode::first_months, FigureUnit::months,
                 Decimal::whole(cost.first_period.months), of_rule("Appendix J(b)(5)"));
    ledger.given(FigureCode::odd_days, FigureUnit::days, Decimal::whole(cost.first_period.odd_days),
                 of_rule("Appendix J(b)(5)"));
    ledger.given(FigureCode::apr, FigureUnit::percent, long_apr(of, cost),
                 of_rule(CommonSource::rate_that_holds, 30));
    ledger.figure(FigureCode::worth_at_apr,
                  worth_at(cost.buydown.monthly.empty() ? ScheduleColumn::payment
                                                        : ScheduleColumn::bought_down,
                           figure("apr"), figure("first_months"), figure("odd_days")),
                  of_rule("Appendix J(b)", 30), cost.amount_financed);
}

/// What the buyer's part of a buydown pays of each year's payments, and what is left to disclose.
void add_levels(const RecheckCase& of, const CostOfCredit& cost, Ledger& ledger) {
    const Ground rule = of_rule("comments 17(c)(1)-3 to -5", 37);
    for (std::size_t i = 0; i < cost.buydown.monthly.size(); ++i) {
        const int year = static_cast<int>(i) + 1;
        const std::string n = std::to_string(year);
        ledger.figure(
            NumberedLabel{NumberedFigure::bought_down_month, year},
            to_cent(figure("subsidy_" + n) * figure("buyers_buydown") / figure("buydown_subsidy")),
            rule, cost.buydown.monthly[i]);
        ledger.figure(NumberedLabel{NumberedFigure::disclosed_payment, year},
                      figure("principal_and_interest") - figure("bought_down_month_" + n),
                      of_rule("1026.18(g), 1026.37(c)"),
                      of.f.schedule.payment() - cost.buydown.monthly[i]);
    }
}

/// Points and the upfront fee that a buyer, or a seller for the buyer, pays; a lender credit is
/// none.
std::vector<Formula> charges_for_the_loan(Ledger& ledger) {
    std::vector<Formula> charges{greatest_of({figure("points"), number(0)})};
    for (const char* id : {"upfront_fee", "buyers_buydown"}) {
        if (ledger.has(id)) charges.push_back(figure(id));
    }
    return charges;
}

/// A column through a month, less what the buyer's buydown pays.
Formula less_bought_down(const CostOfCredit& cost, ScheduleColumn column, int through) {
    const Formula sum = column_sum(column, 1, through);
    return cost.buydown.monthly.empty() ? sum
                                        : sum - column_sum(ScheduleColumn::bought_down, 1, through);
}

void add_totals(const RecheckCase& of, const CostOfCredit& cost, Ledger& ledger) {
    const int months = of.f.schedule.months();
    std::vector<Formula> loan_costs = charges_for_the_loan(ledger);
    loan_costs.push_back(sum_of_figures(costs_that(of, [](const ClosingCost& c) {
        return c.section == CostSection::origination || c.section == CostSection::not_shopped_for ||
               c.section == CostSection::shopped_for;
    })));
    ledger.step(FigureCode::loan_costs, sum_of(std::move(loan_costs)),
                of_rule("1026.37(f)(1)-(3)"));
    ledger.figure(FigureCode::total_of_payments,
                  less_bought_down(cost, ScheduleColumn::payment, months) +
                      figure("all_insurance") + figure("loan_costs") - figure("sellers_points") +
                      figure("prepaid_interest"),
                  of_rule("1026.38(o)(1), comment 38(o)(1)-1"), cost.total_of_payments);
    ledger.figure(FigureCode::disclosed_in_five_years,
                  less_bought_down(cost, ScheduleColumn::payment, five_years) +
                      column_sum(ScheduleColumn::insurance, 1, five_years) + figure("loan_costs") +
                      figure("prepaid_interest"),
                  of_rule("1026.37(l)(1)"), cost.disclosed_in_five_years);
    ledger.figure(FigureCode::disclosed_principal_in_five_years,
                  column_sum(ScheduleColumn::principal, 1, five_years), of_rule("1026.37(l)(1)"),
                  cost.disclosed_principal_in_five_years);
}

} // namespace

void recheck_credit_cost(const RecheckCase& of, const CostOfCredit& cost, Ledger& ledger) {
    const int months = of.f.schedule.months();
    ledger.section(ProofPart::cost_of_credit);
    add_levels(of, cost, ledger);
    std::vector<Formula> prepaid = charges_for_the_loan(ledger);
    prepaid.push_back(figure("prepaid_interest"));
    prepaid.push_back(
        sum_of_figures(costs_that(of, [](const ClosingCost& c) { return c.finance_charge; })));
    ledger.figure(FigureCode::prepaid_finance_charge,
                  sum_of(std::move(prepaid)) - figure("sellers_points"), of_rule("1026.4, 1026.18"),
                  cost.prepaid_finance_charge);
    const Formula owed = ledger.has("principal_reduction")
                             ? figure("loan") - figure("principal_reduction")
                             : figure("loan");
    ledger.figure(FigureCode::amount_financed, owed - figure("prepaid_finance_charge"),
                  of_rule("1026.18(b)"), cost.amount_financed);
    ledger.step(FigureCode::all_interest, less_bought_down(cost, ScheduleColumn::interest, months),
                rounded_by(13));
    ledger.step(FigureCode::all_insurance, column_sum(ScheduleColumn::insurance, 1, months), {});
    ledger.figure(FigureCode::finance_charge,
                  figure("all_interest") + figure("all_insurance") +
                      figure("prepaid_finance_charge"),
                  of_rule("1026.4, 1026.18(d)"), cost.finance_charge);
    // Of the loan: without one there is nothing that it could be a part of.
    const bool has_loan = of.f.loan > Money{};
    ledger.figure(FigureCode::total_interest_percentage, FigureUnit::percent,
                  has_loan ? rounded((figure("all_interest") + figure("prepaid_interest")) *
                                         number(100) / figure("loan"),
                                     3, Rounding::half_away)
                           : number(0),
                  of_rule("1026.37(l)(3)", 29), cost.total_interest_percentage.value());
    add_totals(of, cost, ledger);
    add_apr(of, cost, ledger);
}

} // namespace quoin
