// Answering a schedule.
#include <quoin/answers/month_by_month.hpp>

#include <algorithm>

namespace quoin {
namespace {

/// Payments that carry mortgage insurance when extra principal is paid: on request, the first with
/// an actual balance at 80 % of value; otherwise as scheduled. None after the loan has ended.
int insured_months(const ScenarioRules& rules, const LoanFigures& f, const Schedule& schedule) {
    int months = std::min(f.insurance.months(), schedule.months());
    const bool conventional = rules.program->annual == AnnualMethod::lender_factor;
    if (!conventional || !rules.scenario->end_mi_on_request) return months;
    const Money eighty = percent_of(f.value, Percent(Decimal::whole(80)), Rounding::down);
    for (int month = 1; month <= months; ++month) {
        if (schedule.balance(month) <= eighty) return month;
    }
    return months;
}

std::vector<MonthRow> rows_of(const Schedule& schedule, const MonthlyPremium& insurance,
                              int insured, Date first) {
    std::vector<MonthRow> rows;
    for (int month = 1; month <= schedule.months(); ++month) {
        const ScheduleRow row = schedule.row(month);
        rows.push_back({month, plus_months(first, Months(month - 1)), row.payment, row.interest,
                        row.principal, month <= insured ? insurance.in_month(month) : Money{},
                        row.balance});
    }
    return rows;
}

} // namespace

MonthByMonthAnswer month_by_month(const Sitting& sitting, std::size_t scenario,
                                  std::optional<Money> extra) {
    const ScenarioRules& rules = sitting.rules()[scenario];
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    const LoanFigures f = loan_figures(rules, home, sitting.inquiry().facts);
    MonthByMonthAnswer answer;
    answer.heading = heading_of(sitting);
    answer.scenario = scenario_answer(sitting, rules, f);
    if (!f.available()) return answer;
    const Money added = extra.value_or(rules.scenario->extra_principal);
    const Schedule schedule = amortize(f.schedule.terms(), f.schedule.payment(), added);
    const int insured = insured_months(rules, f, schedule);
    const Date first = answer.scenario.first_payment;
    answer.rows = rows_of(schedule, f.insurance, insured, first);
    answer.total_interest = schedule.total_interest();
    answer.total_insurance = f.insurance.paid_through(insured);
    if (added.is_zero()) return answer;
    answer.saves = ExtraSaves{
        added,
        schedule.months(),
        f.schedule.months() - schedule.months(),
        f.schedule.total_interest() - schedule.total_interest(),
        f.insurance.paid_through(f.insurance.months()) - answer.total_insurance,
        plus_months(first, Months(schedule.months() - 1)),
    };
    return answer;
}

} // namespace quoin
