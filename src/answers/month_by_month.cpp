// Answering a schedule.
#include <quoin/answers/month_by_month.hpp>

#include <algorithm>

namespace quoin {
namespace {

constexpr Percent automatic{Decimal::whole(78)};
constexpr Percent on_request{Decimal::whole(80)};

/// The first payment that leaves at most a percent of the value.
int first_at_most(const Schedule& schedule, Money value, Percent percent) {
    const Money most = percent_of(value, percent, Rounding::down);
    int month = 1;
    while (month < schedule.months() && schedule.balance(month) > most) ++month;
    return month;
}

/// The mortgage insurance of the loan as it is run; none after the loan has ended.
MonthlyPremium insurance_of(const ScenarioRules& rules, const LoanFigures& f,
                            const Schedule& initial, const Schedule& actual) {
    const bool conventional = rules.program->annual == AnnualMethod::lender_factor;
    if (!conventional || f.insurance.months() == 0) return f.insurance;
    const int middle = (rules.scenario->term.count() + 1) / 2;
    const int ends = rules.scenario->end_mi_on_request
                         ? first_at_most(actual, f.value, on_request)
                         : std::min(first_at_most(initial, f.value, automatic), middle);
    return level_premium(f.base_loan, f.annual_percent, std::min(ends, actual.months()));
}

std::vector<MonthRow> rows_of(const Schedule& schedule, const MonthlyPremium& insurance,
                              Date first) {
    std::vector<MonthRow> rows;
    for (int month = 1; month <= schedule.months(); ++month) {
        const ScheduleRow row = schedule.row(month);
        rows.push_back({month, plus_months(first, Months(month - 1)), schedule.step(month).rate,
                        row.payment, row.interest, row.principal, insurance.in_month(month),
                        row.balance});
    }
    return rows;
}

RateWay way_of(const ScenarioRules& rules, const RunAs& run) {
    if (!rules.adjustable) return RateWay::fixed;
    if (run.worst_case) return RateWay::worst_case;
    return run.indexes.empty() ? RateWay::index_of_the_day : RateWay::given_index;
}

/// The loan without extra principal, its rate gone the way that was asked for.
Schedule initial_schedule(const ScenarioRules& rules, const LoanFigures& f, const RunAs& run) {
    const LoanTerms note{f.loan, f.rate, rules.scenario->term};
    switch (way_of(rules, run)) {
    case RateWay::worst_case:
        return amortize(note, worst_case_path(note, *rules.adjustable), {},
                        f.schedule.at_closing());
    case RateWay::given_index:
        return amortize(note, rate_path(note, *rules.adjustable, run.indexes), {},
                        f.schedule.at_closing());
    default:
        return f.schedule;
    }
}

std::vector<YearRow> years_of(const std::vector<MonthRow>& rows) {
    std::vector<YearRow> years;
    for (const MonthRow& row : rows) {
        const int year = (row.month - 1) / 12 + 1;
        if (years.empty() || years.back().year != year)
            years.push_back({year, {}, {}, {}, {}, {}, {}});
        YearRow& sum = years.back();
        sum.last_due = row.due;
        sum.payment += row.payment;
        sum.interest += row.interest;
        sum.principal += row.principal;
        sum.insurance += row.insurance;
        sum.balance = row.balance;
    }
    return years;
}

} // namespace

MonthByMonthAnswer month_by_month(const Sitting& sitting, std::size_t scenario, const RunAs& run) {
    const ScenarioRules& rules = sitting.rules()[scenario];
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    const LoanFigures f = loan_figures(rules, home, sitting.inquiry().facts);
    MonthByMonthAnswer answer;
    answer.heading = heading_of(sitting);
    answer.scenario = scenario_answer(sitting, rules, f);
    answer.way = way_of(rules, run);
    if (!f.available()) return answer;
    const Money added = run.extra.value_or(rules.scenario->extra_principal);
    const Schedule plain = initial_schedule(rules, f, run);
    const Schedule schedule = with_extra(plain, added);
    const MonthlyPremium insurance = insurance_of(rules, f, plain, schedule);
    const Date first = answer.scenario.first_payment;
    if (!schedule.at_closing().is_zero()) {
        answer.at_closing = {sitting.inquiry().closing, schedule.at_closing(), schedule.balance(0)};
    }
    answer.rows = rows_of(schedule, insurance, first);
    answer.years = years_of(answer.rows);
    answer.total_interest = schedule.total_interest();
    answer.total_insurance = insurance.paid_through(schedule.months());
    if (added.is_zero()) return answer;
    answer.saves = ExtraSaves{
        added,
        schedule.months(),
        plain.months() - schedule.months(),
        plain.total_interest() - schedule.total_interest(),
        insurance_of(rules, f, plain, plain).paid_through(plain.months()) - answer.total_insurance,
        plus_months(first, Months(schedule.months() - 1)),
    };
    return answer;
}

} // namespace quoin
