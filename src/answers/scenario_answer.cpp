// From the figures of a scenario to plain values with names.
#include <quoin/answers/scenario_answer.hpp>

#include <algorithm>

#include <quoin/answers/heading.hpp>
#include <quoin/loan/annual_percentage_rate.hpp>
#include <quoin/loan/prepaids.hpp>

namespace quoin {
namespace {

/// LTV to two decimals, half away from zero: a loan cut to whole dollars at 5 % down is 95.00 %.
Ltv shown_ltv(const LoanFigures& f) {
    if (f.value <= Money{}) return {};
    const std::int64_t hundredths =
        multiply_divide(f.base_loan.count(), 10'000, f.value.count(), Rounding::half_away);
    return Ltv(Decimal::billionths(hundredths * (Decimal::one / 100)));
}

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
    terms.ltv = shown_ltv(f);
    terms.down_from_cash = scenario.down.by == DownPayment::By::cash;
    if (f.available()) terms.apr = annual_percentage_rate(rules, f);
    return terms;
}

Date payment_date(Date first, int payment) { return plus_months(first, Months(payment - 1)); }

InsuranceAnswer insurance_of(const ScenarioRules& rules, const LoanFigures& f, Date first) {
    InsuranceAnswer answer;
    const bool conventional = rules.program->annual == AnnualMethod::lender_factor;
    answer.name = rules.program->annual_name;
    answer.annual_percent = f.annual_percent;
    answer.payments = f.insurance.months();
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

} // namespace

std::optional<Rate> annual_percentage_rate(const ScenarioRules& rules, const LoanFigures& f) {
    const Money charges = std::max(f.cash.points, Money{}) + f.upfront_fee +
                          rules.closing_costs.finance_charges(f.loan, f.price);
    std::vector<Money> payments;
    payments.reserve(static_cast<std::size_t>(f.schedule.months()));
    for (int month = 1; month <= f.schedule.months(); ++month) {
        payments.push_back(f.schedule.row(month).payment + f.insurance.in_month(month));
    }
    return annual_percentage_rate(f.loan - charges, payments);
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
    answer.upfront_name = rules.program->upfront_name;
    answer.upfront_percent = f.upfront_percent;
    answer.upfront_fee = f.upfront_fee;
    answer.financed_fee = f.financed_fee;
    answer.monthly = f.monthly;
    answer.first_year = f.first_year;
    answer.first_year_months = f.local.land_only_months;
    answer.cash = f.cash;
    answer.credit_lost = f.credit_lost;
    answer.first_payment = first_payment_date(sitting.inquiry().closing);
    answer.insurance = insurance_of(rules, f, answer.first_payment);
    add_totals(f, answer);
    return answer;
}

} // namespace quoin
