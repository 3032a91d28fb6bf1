// From the figures of a scenario to plain values with names.
#include <quoin/answers/scenario_answer.hpp>

#include <algorithm>

#include <quoin/answers/heading.hpp>
#include <quoin/loan/annual_percentage_rate.hpp>
#include <quoin/loan/prepaids.hpp>

#include "single_premium_name.hpp"

namespace quoin {
namespace {

ScenarioTerms terms_of(const Sitting& sitting, const ScenarioRules& rules, const LoanFigures& f) {
    const Scenario& scenario = *rules.scenario;
    ScenarioTerms terms;
    terms.name = scenario.name;
    terms.program = rules.program->name;
    terms.program_id = rules.program->id;
    terms.fine_print = rules.program->fine_print;
    terms.term = scenario.term;
    terms.lock_days = scenario.lock_days;
    terms.lock_ends = plus_days(sitting.inquiry().as_of, scenario.lock_days);
    terms.score = scenario.score;
    terms.rate = f.rate;
    terms.points = f.points;
    terms.down_payment = f.cash.down_payment;
    terms.down_percent = f.down_percent;
    terms.ltv = shown_ltv(f.base_loan, f.value);
    terms.down_from_cash = scenario.down.by == DownPayment::By::cash;
    return terms;
}

Date payment_date(Date first, int payment) { return plus_months(first, Months(payment - 1)); }

InsuranceAnswer insurance_of(const ScenarioRules& rules, const LoanFigures& f, Date first) {
    InsuranceAnswer answer;
    const bool conventional = rules.program->annual == AnnualMethod::lender_factor;
    answer.name = rules.program->annual_name;
    answer.annual_percent = f.annual_percent;
    answer.payments = f.insurance.months();
    answer.paid_up = pays_single_premium(rules, f.ltv);
    if (answer.payments == 0) return answer;
    answer.first_monthly = f.insurance.in_month(1);
    answer.last_date = payment_date(first, answer.payments);
    answer.whole_term = answer.payments >= f.schedule.months();
    if (conventional && f.insurance_end.on_request > 0) {
        answer.on_request_payment = f.insurance_end.on_request;
        answer.on_request_date = payment_date(first, f.insurance_end.on_request);
    }
    return answer;
}

void add_totals(const LoanFigures& f, ScenarioAnswer& answer) {
    constexpr int five_years = 60;
    constexpr int ten_years = 120;
    answer.payments = f.schedule.months();
    answer.last_payment = f.schedule.last_payment();
    answer.total_interest = f.schedule.total_interest();
    answer.paid_in_five_years = f.paid_in_five_years();
    answer.paid_over_loan = f.paid_over_loan();
    answer.balance_after_five_years = f.schedule.balance(five_years);
    answer.balance_after_ten_years = f.schedule.balance(ten_years);
}

std::string upfront_name_of(const ScenarioRules& rules, const LoanFigures& f) {
    return pays_single_premium(rules, f.ltv) ? single_premium_name(*rules.program)
                                             : rules.program->upfront_name;
}

} // namespace

Ltv shown_ltv(Money base_loan, Money value) {
    if (value <= Money{}) return {};
    const std::int64_t hundredths =
        multiply_divide(base_loan.count(), 10'000, value.count(), Rounding::half_away);
    return Ltv(Decimal::billionths(hundredths * (Decimal::one / 100)));
}

std::vector<Money> loan_payments(const LoanFigures& f) {
    std::vector<Money> payments = f.schedule.payments();
    for (std::size_t i = 0; i < payments.size(); ++i) {
        payments[i] += f.insurance.in_month(static_cast<int>(i) + 1);
    }
    return payments;
}

CostOfCredit cost_of_credit(const ScenarioRules& rules, const LoanFigures& f) {
    constexpr int five_years = 60;
    const Money loan_costs = rules.closing_costs.loan_costs(f.loan, f.price) +
                             std::max(f.cash.points, Money{}) + f.upfront_fee;
    const Money insurance = f.insurance.paid_through(f.schedule.months());
    CostOfCredit cost;
    cost.prepaid_finance_charge =
        std::max(f.cash.points, Money{}) - f.credits.sellers_points + f.upfront_fee +
        rules.closing_costs.finance_charges(f.loan, f.price) + f.prepaid_interest.total();
    cost.amount_financed = f.schedule.balance(0) - cost.prepaid_finance_charge;
    cost.finance_charge = f.schedule.total_interest() + insurance + cost.prepaid_finance_charge;
    cost.total_of_payments =
        f.schedule.total_paid() + insurance + loan_costs + f.prepaid_interest.total();
    cost.paid_in_five_years = f.schedule.paid_through(five_years) +
                              f.insurance.paid_through(five_years) + loan_costs +
                              f.prepaid_interest.total();
    cost.principal_in_five_years = f.schedule.balance(0) - f.schedule.balance(five_years);
    const Money interest = f.schedule.total_interest() + f.prepaid_interest.total();
    if (f.loan > Money{}) {
        cost.total_interest_percentage = Percent(Decimal::billionths(multiply_divide(
            multiply_divide(interest.count(), 100'000, f.loan.count(), Rounding::half_away),
            Decimal::one, 1000, Rounding::down)));
    }
    cost.first_period = first_period(rules.closing, rules.first_payment);
    cost.apr = annual_percentage_rate(cost.amount_financed, loan_payments(f), cost.first_period);
    return cost;
}

ScenarioAnswer scenario_answer(const Sitting& sitting, const ScenarioRules& rules,
                               const LoanFigures& f) {
    ScenarioAnswer answer;
    answer.terms = terms_of(sitting, rules, f);
    answer.refusals = f.refusals;
    answer.price = f.price;
    answer.value = f.value;
    answer.base_loan = f.base_loan;
    answer.loan = f.loan;
    if (!f.available()) return answer;
    answer.upfront_name = upfront_name_of(rules, f);
    answer.upfront_percent = f.upfront_percent;
    answer.upfront_fee = f.upfront_fee;
    answer.financed_fee = f.financed_fee;
    answer.monthly = f.monthly;
    answer.first_year = f.first_year;
    answer.first_year_months = f.local.land_only_months;
    answer.buydown = f.buydown;
    answer.cash = f.cash;
    answer.credits = f.credits;
    answer.lender_credit_without_use = f.lender_credit_without_use;
    answer.contribution_cap = f.contribution_cap;
    answer.first_payment = first_payment_date(sitting.inquiry().closing);
    answer.insurance = insurance_of(rules, f, answer.first_payment);
    answer.cost_of_credit = cost_of_credit(rules, f);
    answer.terms.apr = answer.cost_of_credit.apr;
    answer.terms.adjustable = adjustable_answer(rules, sitting.sheet(), f);
    add_totals(f, answer);
    return answer;
}

} // namespace quoin
