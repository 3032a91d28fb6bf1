// One home under one scenario, step by step.
#include <quoin/loan/loan_figures.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/housing_escrow.hpp>
#include <quoin/loan/level_payment.hpp>

#include "loan_sizing.hpp"

namespace quoin {
namespace {

constexpr int months_a_year = 12;

Money monthly_part(Money yearly) { return part_of(yearly, months_a_year, Rounding::half_away); }

/// Mortgage insurance by the program's method, on the schedule that was made.
void insure(const ScenarioRules& rules, LoanFigures& f) {
    const LoanProgram& program = *rules.program;
    const Scenario& scenario = *rules.scenario;
    const Months duration(std::min(fee_months(rules, f), f.schedule.months()));
    switch (program.annual) {
    case AnnualMethod::none:
        return;
    case AnnualMethod::hud_average_balance:
        // On the note's own schedule: prepayments do not count (12 USC 1709(c)(2)(B)).
        f.insurance =
            hud_annual_premium({f.loan, f.rate, scenario.term}, f.annual_percent,
                               f.financed_fee.is_zero() ? Percent{} : f.upfront_percent, duration);
        return;
    case AnnualMethod::usda_average_balance:
        f.insurance = usda_annual_fee(f.schedule, f.annual_percent, duration);
        return;
    case AnnualMethod::lender_factor:
        f.insurance_end = insurance_end(f.schedule, f.value);
        if (f.annual_percent == Percent{}) return;
        f.insurance = level_premium(f.base_loan, f.annual_percent,
                                    scenario.end_mi_on_request ? f.insurance_end.on_request
                                                               : f.insurance_end.last_automatic());
        return;
    }
}

Schedule schedule_of(const ScenarioRules& rules, const LoanFigures& f) {
    const LoanTerms note{f.loan, f.rate, rules.scenario->term};
    const Money at_closing = f.cash.principal_reduction;
    if (!rules.adjustable) {
        return amortize(note, level_payment(note.loan, note.rate, note.term), {}, at_closing);
    }
    return amortize(note, composite_path(note, *rules.adjustable), {}, at_closing);
}

void set_monthly(LoanFigures& f) {
    const LocalCosts& local = f.local;
    f.monthly.principal_and_interest = f.schedule.payment();
    f.monthly.mortgage_insurance = f.insurance.months() > 0 ? f.insurance.in_month(1) : Money{};
    f.monthly.property_tax = monthly_part(local.settled.levies);
    f.monthly.district_charges = monthly_part(local.settled.districts);
    f.monthly.homeowners_insurance = monthly_part(local.homeowner);
    f.monthly.flood_insurance = monthly_part(local.flood);
    f.monthly.wind_insurance = monthly_part(local.wind);
    f.monthly.association_dues = local.dues;
    f.first_year = f.monthly;
    if (!local.land_only) return;
    f.first_year.property_tax = monthly_part(local.land_only->levies);
    f.first_year.district_charges = monthly_part(local.land_only->districts);
}

} // namespace

Money Monthly::total() const {
    return principal_and_interest + mortgage_insurance + property_tax + homeowners_insurance +
           flood_insurance + wind_insurance + association_dues + district_charges;
}

Monthly operator-(const Monthly& a, const Monthly& b) {
    Monthly d;
    for (const auto part :
         {&Monthly::principal_and_interest, &Monthly::mortgage_insurance, &Monthly::property_tax,
          &Monthly::homeowners_insurance, &Monthly::flood_insurance, &Monthly::wind_insurance,
          &Monthly::association_dues, &Monthly::district_charges}) {
        d.*part = a.*part - b.*part;
    }
    return d;
}

Money LoanFigures::paid_through(int month) const {
    const Money local_month =
        monthly.total() - monthly.principal_and_interest - monthly.mortgage_insurance;
    return cash.needed() + schedule.paid_through(month) + insurance.paid_through(month) +
           local_month * std::min(month, schedule.months());
}

Money LoanFigures::spent_and_owed(int month) const {
    return cash.needed() + schedule.paid_through(month) + insurance.paid_through(month) +
           schedule.balance(month);
}

LoanFigures loan_figures(const ScenarioRules& rules, const PricedHome& home,
                         const PurchaseFacts& facts) {
    LoanFigures f;
    f.rows.fill(no_row);
    f.price = home.contract_price;
    f.value = std::min(f.price, facts.appraised_value.value_or(f.price));
    f.local = local_costs(*rules.place, f.price, home.flood_zone);
    if (!f.local.homeowner_row) f.refusals.push_back({Barred::insurance_not_offered, {}, {}});
    f.rows[static_cast<std::size_t>(Lookup::homeowner)] = f.local.homeowner_row.value_or(no_row);
    f.prepaids = prepaids(*rules.place, f.local, rules.closing);
    f.escrow_deposit = initial_escrow_deposit(rules, f.local);
    size_loan(rules, home, facts, f);
    std::stable_sort(f.refusals.begin(), f.refusals.end(),
                     [](const Refusal& a, const Refusal& b) { return a.why < b.why; });
    if (!f.available()) return f;
    f.schedule = schedule_of(rules, f);
    insure(rules, f);
    set_monthly(f);
    ensure(f.price - f.base_loan == f.cash.down_payment,
           "down payment and base loan must make the price");
    return f;
}

} // namespace quoin
