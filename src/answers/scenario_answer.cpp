// From the figures of a scenario to plain values with names.
#include <quoin/answers/scenario_answer.hpp>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/prepaids.hpp>

namespace quoin {
namespace {

ScenarioTerms terms_of(const Sitting& sitting, const ScenarioRules& rules, const LoanFigures& f) {
    const Scenario& scenario = rules.scenario;
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
    terms.down_payment = f.cash[CashPart::down_payment];
    terms.down_percent = f.down_percent;
    terms.ltv = shown_ltv(f.base_loan, f.value);
    terms.down_from_cash = scenario.down.by == DownPayment::By::cash;
    terms.extra_principal = scenario.extra_principal;
    for (const ListGap& gap : rules.gaps.continued) {
        if (reads(rules, gap.list, f.ltv)) terms.continued.push_back(gap);
    }
    return terms;
}

Date payment_date(Date first, int payment) { return plus_months(first, Months(payment - 1)); }

InsuranceAnswer insurance_of(const ScenarioRules& rules, const LoanFigures& f, Date first) {
    InsuranceAnswer answer;
    answer.name = rules.program->annual_name;
    answer.annual_percent = f.annual_percent;
    answer.payments = f.paid_insurance().months();
    answer.paid_up = pays_single_premium(rules, f.ltv);
    if (answer.payments == 0) return answer;
    answer.first_monthly = f.insurance.in_month(1);
    ensure(answer.payments <= f.paid_schedule().months(), "no payment is insured that is not made");
    answer.last_date = payment_date(first, answer.payments);
    answer.whole_term = answer.payments >= f.paid_schedule().months();
    const int asked = f.paid_insurance_end().last_on_request();
    if (rules.lender_insures() && asked > 0) {
        answer.on_request_payment = asked;
        answer.on_request_date = payment_date(first, asked);
    }
    return answer;
}

void add_totals(const LoanFigures& f, ScenarioAnswer& answer) {
    constexpr int five_years = 60;
    constexpr int ten_years = 120;
    const Schedule& paid = f.paid_schedule();
    answer.payments = paid.months();
    answer.last_payment = paid.last_payment();
    answer.total_interest = paid.total_interest();
    answer.paid_in_five_years = f.paid_in_five_years();
    answer.paid_over_loan = f.paid_over_loan();
    answer.balance_after_five_years = paid.balance(five_years);
    answer.balance_after_ten_years = paid.balance(ten_years);
    ensure_equal(f.paid_through(0), f.cash.needed(), "what is paid by the closing is the cash");
    const int left = f.schedule.terms().term.count() - paid.months(); // ended early: some
    ensure(left == 0 ||
               f.paid_through(paid.months()) + f.monthly.local() * left == answer.paid_over_loan,
           "once a loan is paid its home alone is paid for");
}

std::string upfront_name_of(const ScenarioRules& rules, const LoanFigures& f) {
    return pays_single_premium(rules, f.ltv) ? rules.program->annual_name
                                             : rules.program->upfront_name;
}

} // namespace

Ltv shown_ltv(Money base_loan, Money value) {
    if (value <= Money{}) return {};
    const std::int64_t hundredths =
        multiply_divide(base_loan.count(), 10'000, value.count(), Rounding::half_away);
    return Ltv(Decimal::billionths(hundredths * Decimal::hundredth));
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
    ensure_equal(answer.monthly.local(),
                 answer.first_year.local() +
                     (answer.monthly - answer.first_year).from(PartSource::tax),
                 "the first year's month differs by its tax alone");
    return answer;
}

} // namespace quoin
