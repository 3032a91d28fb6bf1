// Answering a schedule.
#include <quoin/answers/month_by_month.hpp>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

std::vector<MonthRow> rows_of(const LoanFigures& f, const LoanRun& run, Date first) {
    std::vector<MonthRow> rows;
    for (int month = 1; month <= run.schedule.months(); ++month) {
        const ScheduleRow row = run.schedule.row(month);
        rows.push_back({month, plus_months(first, Months(month - 1)), run.schedule.step(month).rate,
                        row.payment, row.interest, row.principal, run.insurance.in_month(month),
                        row.balance, f.from_buydown(month)});
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
    const LoanTerms note{f.loan, f.rate, rules.scenario.term};
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
            years.push_back({year, {}, {}, {}, {}, {}, {}, {}});
        YearRow& sum = years.back();
        sum.last_due = row.due;
        sum.payment += row.payment;
        sum.interest += row.interest;
        sum.principal += row.principal;
        sum.insurance += row.insurance;
        sum.balance = row.balance;
        sum.from_buydown += row.from_buydown;
    }
    return years;
}

/// The promise of the months: by years they sum to the loan, and the answer tells one loan.
void check(const MonthByMonthAnswer& answer, const Schedule& paid) {
    YearRow sum{};
    for (const YearRow& year : answer.years) {
        sum.payment += year.payment;
        sum.interest += year.interest;
        sum.principal += year.principal;
        sum.insurance += year.insurance;
    }
    ensure_equal(sum.principal + paid.at_closing(), paid.terms().loan,
                 "principal by years, with that paid at closing, sums to the loan");
    ensure_equal(sum.interest, answer.total_interest, "interest by years sums to all of it");
    ensure_equal(sum.payment, paid.total_paid(), "payments by years sum to what is paid");
    ensure_equal(sum.insurance, answer.total_insurance, "insurance by years sums to all of it");
    ensure(answer.rows.empty() || answer.rows.back().balance.is_zero(),
           "the last payment clears the loan");
    const bool as_quoted = answer.way == RateWay::fixed || answer.way == RateWay::index_of_the_day;
    if (!as_quoted) return;
    ensure_equal(answer.scenario.payments, paid.months(), "the months are as many as are quoted");
    ensure_equal(answer.scenario.total_interest, answer.total_interest,
                 "the months' interest is what is quoted");
}

} // namespace

MonthByMonthAnswer month_by_month(const Sitting& sitting, std::size_t scenario, const RunAs& run) {
    const ScenarioRules& given = sitting.rules(scenario);
    ensure(given.adjustable || (run.indexes.empty() && !run.worst_case),
           "only a rate that changes goes one way or another");
    Scenario as_run = given.scenario;
    as_run.extra_principal = run.extra.value_or(as_run.extra_principal);
    const ScenarioRules rules = given.with(as_run);
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    const LoanFigures f = loan_figures(rules, home, sitting.inquiry().facts);
    MonthByMonthAnswer answer;
    answer.heading = heading_of(sitting);
    answer.scenario = scenario_answer(sitting, rules, f);
    answer.way = way_of(rules, run);
    if (!f.available()) return answer;
    const Money added = as_run.extra_principal;
    const Schedule initial = initial_schedule(rules, f, run);
    const LoanRun plain = run_of(rules, f, initial, initial);
    const LoanRun paid = run_of(rules, f, initial, with_extra(initial, added));
    const Date first = answer.scenario.first_payment;
    if (!paid.schedule.at_closing().is_zero()) {
        answer.at_closing = {sitting.inquiry().closing, paid.schedule.at_closing(),
                             paid.schedule.balance(0)};
    }
    answer.rows = rows_of(f, paid, first);
    answer.years = years_of(answer.rows);
    const int months = paid.schedule.months();
    answer.total_interest = paid.schedule.total_interest();
    answer.total_insurance = paid.insurance.paid_through(months);
    for (const YearRow& year : answer.years) answer.total_from_buydown += year.from_buydown;
    check(answer, paid.schedule);
    ensure(answer.total_from_buydown <= f.cash[CashPart::buydown],
           "a buydown pays no more than was put up for it");
    if (added.is_zero() || months == 0) return answer;
    answer.saves = ExtraSaves{
        added,
        months,
        plain.schedule.months() - months,
        plain.schedule.total_interest() - answer.total_interest,
        plain.insurance.paid_through(plain.schedule.months()) - answer.total_insurance,
        plus_months(first, Months(months - 1)),
    };
    return answer;
}

} // namespace quoin
