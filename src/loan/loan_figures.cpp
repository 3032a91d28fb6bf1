// One home under one scenario, step by step.
#include <quoin/loan/loan_figures.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/fee_methods.hpp>
#include <quoin/loan/housing_escrow.hpp>
#include <quoin/loan/level_payment.hpp>

#include "loan_sizing.hpp"

namespace quoin {
namespace {

/// Mortgage insurance by the program's method, on the initial schedule; a lender's by its end.
MonthlyPremium premium(const ScenarioRules& rules, const SizedLoan& f, const Schedule& initial,
                       const InsuranceEnd& end) {
    if (rules.program->annual == nullptr || f.annual_percent == Percent{}) return {};
    const bool asked = rules.scenario.end_mi_on_request;
    const int months = !rules.lender_insures()
                           ? std::min(fee_months(rules, f), initial.months())
                           : (asked ? end.last_on_request() : end.last_automatic());
    return rules.program->annual->charge({{f.loan, f.rate, rules.scenario.term},
                                          f.base_loan,
                                          f.annual_percent,
                                          f.upfront_in_loan(),
                                          initial,
                                          months});
}

Schedule schedule_of(const ScenarioRules& rules, const SizedLoan& f) {
    const LoanTerms note{f.loan, f.rate, rules.scenario.term};
    const Money at_closing = f.cash[CashPart::principal_reduction];
    if (!rules.adjustable) {
        return amortize(note, level_payment(note.loan, note.rate, note.term), {}, at_closing);
    }
    return amortize(note, composite_path(note, *rules.adjustable), {}, at_closing);
}

LoanRun initial_run(const ScenarioRules& rules, const SizedLoan& f) {
    LoanRun run{schedule_of(rules, f), {}, {}};
    if (rules.lender_insures()) run.insurance_end = insurance_end(run.schedule, f.value);
    run.insurance = premium(rules, f, run.schedule, run.insurance_end);
    return run;
}

void set_monthly(LoanFigures& f) {
    const auto month = [&](const PropertyTax& tax) {
        Monthly parts = home_month(f.local, tax);
        parts[MonthPart::principal_and_interest] = f.schedule.payment();
        if (f.insurance.months() > 0) {
            parts[MonthPart::mortgage_insurance] = f.insurance.in_month(1);
        }
        return parts;
    };
    f.monthly = month(f.local.settled);
    f.first_year = f.local.land_only ? month(*f.local.land_only) : f.monthly;
}

} // namespace

Money LoanFigures::from_buydown(int month) const {
    const Schedule& paid = paid_schedule();
    if (!buydown || month > paid.months()) return {};
    return std::min(buydown->subsidy_in_month(month), paid.row(month).payment);
}

Money LoanFigures::spent_through(int month) const {
    const Schedule& paid = paid_schedule();
    Money spent = cash.needed() + paid.paid_through(month) + paid_insurance().paid_through(month);
    const int last = std::min(month, paid.months());
    if (buydown && last > 0) spent -= buydown->subsidy_through(last - 1) + from_buydown(last);
    return spent;
}

Money LoanFigures::paid_in(int month) const {
    return spent_through(month) - spent_through(month - 1) + monthly.local();
}

Money LoanFigures::paid_through(int month) const {
    return spent_through(month) + monthly.local() * std::min(month, schedule.terms().term.count());
}

Money LoanFigures::spent_and_owed(int month) const {
    return spent_through(month) + paid_schedule().balance(month);
}

LoanRun run_of(const ScenarioRules& rules, const LoanFigures& f, const Schedule& initial,
               Schedule paid) {
    LoanRun run;
    run.insurance = f.insurance;
    if (rules.lender_insures()) {
        run.insurance_end = insurance_end(initial, paid, f.value);
        run.insurance = premium(rules, f, initial, run.insurance_end);
    }
    run.insurance = run.insurance.ended_by(paid.months());
    run.schedule = std::move(paid);
    return run;
}

namespace {

/// What the loan comes to by its parts.
void check_loan(const ScenarioRules& rules, const LoanFigures& f) {
    ensure_equal(f.base_loan + f.cash[CashPart::down_payment], f.price,
                 "down payment and base loan make the price");
    ensure_equal(f.base_loan + f.financed_fee, f.loan, "base loan and financed fee make the loan");
    ensure(f.financed_fee >= Money{} &&
               f.financed_fee + f.cash[CashPart::upfront_fee] >= f.upfront_fee,
           "an upfront fee is financed or paid");
    ensure(!rules.program->whole_dollars || f.loan.count() % 100 == 0,
           "a program that lends whole dollars does");
    ensure(f.ltv <= f.gross_ltv, "a premium in the loan does not lower its LTV");
    const Money needed = f.cash.needed();
    ensure(rules.scenario.down.by != DownPayment::By::cash || needed <= rules.scenario.down.amount,
           "a loan solved from the cash takes no more of it than there is");
    ensure(needed >= Money{}, "no purchase pays its buyer");
}

/// What its months come to.
void check_months(const ScenarioRules& rules, const LoanFigures& f) {
    ensure(f.schedule.terms() == LoanTerms{f.loan, f.rate, rules.scenario.term},
           "the schedule is of the loan");
    ensure_equal(f.schedule.at_closing(), f.cash[CashPart::principal_reduction],
                 "the schedule begins with the principal that is reduced at closing");
    ensure_equal(f.monthly[MonthPart::principal_and_interest], f.schedule.payment(),
                 "the month pays the schedule's payment");
    ensure(f.insurance.months() <= f.schedule.months(), "no loan is insured when it has ended");
    ensure(!f.paid_ahead || f.paid_ahead->schedule.balance(0) == f.schedule.balance(0),
           "a loan that is paid ahead begins as it is disclosed");
    ensure(!f.buydown || f.buydown->note_payment == f.schedule.payment(),
           "a buydown is of the loan's own payment");
    ensure(!f.buydown || f.buydown->total_subsidy() == f.cash[CashPart::buydown],
           "what a buydown pays is put up at closing");
}

} // namespace

void check(const ScenarioRules& rules, const LoanFigures& f) {
    check_loan(rules, f);
    check_months(rules, f);
}

namespace {

HomeFigures home_figures(const ScenarioRules& rules, const PricedHome& home,
                         const PurchaseFacts& facts) {
    HomeFigures f;
    f.price = home.contract_price;
    f.value = std::min(f.price, facts.appraised_value.value_or(f.price));
    f.local = local_costs(*rules.place, f.price, home.flood_zone);
    f.rows.note(Lookup::homeowner, f.local.homeowner_row.value_or(no_row));
    f.prepaids = prepaids(*rules.place, f.local, rules.closing);
    f.escrow_deposit = initial_escrow_deposit(rules, f.local);
    return f;
}

} // namespace

LoanFigures loan_figures(const ScenarioRules& rules, const PricedHome& home,
                         const PurchaseFacts& facts) {
    ensure(rules.program != nullptr && rules.place != nullptr,
           "figures are of a scenario by a program in a place");
    keep_on(rules.watch);
    const HomeFigures of_home = home_figures(rules, home, facts);
    auto [sized, refusals] = size_loan(rules, home, facts, of_home);
    if (!of_home.local.homeowner_row) refusals.push_back({Barred::insurance_not_offered, {}, {}});
    std::stable_sort(refusals.begin(), refusals.end(),
                     [](const Refusal& a, const Refusal& b) { return a.why < b.why; });
    LoanFigures f(std::move(sized), std::move(refusals));
    if (!f.available()) return f;
    static_cast<LoanRun&>(f) = initial_run(rules, f);
    set_monthly(f);
    if (const Money extra = rules.scenario.extra_principal; extra > Money{}) {
        f.paid_ahead = run_of(rules, f, f.schedule, with_extra(f.schedule, extra));
    }
    check(rules, f);
    return f;
}

} // namespace quoin
