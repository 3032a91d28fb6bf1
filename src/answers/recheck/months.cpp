// Running the schedule anew, its insurance from its own balances.
#include "ledger.hpp"
#include "reckon.hpp"

#include <algorithm>

#include <quoin/loan/fee_methods.hpp>

namespace quoin {
namespace {

Money cents_of(Int128 top, Int128 bottom) {
    return Money::cents(
        static_cast<std::int64_t>(divide_rounded(top, bottom, Rounding::half_away)));
}

/// What the formulas of a premium may name.
Known known_of(const RecheckCase& of, const std::vector<RecheckedMonth>& months) {
    const LoanFigures& f = of.f;
    Known known;
    const auto money = [&](const char* id, Money amount) {
        known.figures[id] = Fraction(amount.count(), 100);
    };
    const auto percent = [&](const char* id, Decimal value) {
        known.figures[id] = Fraction(value.billionths(), Decimal::one);
    };
    money("value", f.value);
    money("base_loan", f.base_loan);
    money("loan", f.loan);
    money("principal_and_interest", f.schedule.payment());
    percent("note_rate", f.rate.percent());
    percent("annual_percent", f.annual_percent.value());
    percent("upfront_in_loan", f.upfront_in_loan().value());
    known.months = &months;
    return known;
}

/// Each loan year's premium from its own balances.
void insure(const RecheckCase& of, Known& known, std::vector<RecheckedMonth>& months) {
    known.last_month = static_cast<int>(months.size()) - 1;
    Money premium;
    for (int row = 1; row <= std::min(of.f.insurance.months(), known.last_month); ++row) {
        RecheckedMonth& month = months[static_cast<std::size_t>(row)];
        if (row % 12 == 1) {
            const YearRows year{row - 1, std::min(row + 10, known.last_month - 1)};
            month.insurance_by = of.rules.program->annual->proof(year);
            premium = reckon_money(month.insurance_by, known);
        }
        month.insurance = premium;
    }
}

/// The buyer's part of the subsidy of each month.
void buy_down(const RecheckCase& of, std::vector<RecheckedMonth>& months) {
    if (!of.f.buydown) return;
    const Money whole = of.f.buydown->total_subsidy();
    const Money own = whole - of.f.credits.by_use[CreditUse::buydown];
    if (whole <= Money{}) return;
    for (std::size_t row = 1; row < months.size(); ++row) {
        const Money subsidy = of.f.buydown->subsidy_in_month(static_cast<int>(row));
        months[row].bought_down = cents_of(Int128{subsidy.count()} * own.count(), whole.count());
    }
}

/// HUD's own balances are averaged over whole years of the note, though a loan whose principal was
/// reduced at closing ends within its last.
int last_row(const RecheckCase& of, bool by_hud) {
    const int months = of.f.schedule.months();
    if (!by_hud || of.f.cash[CashPart::principal_reduction].is_zero()) return months;
    return std::max(
        months, std::min((of.f.insurance.months() + 11) / 12 * 12, of.rules.scenario.term.count()));
}

} // namespace

std::vector<RecheckedMonth> recheck_months(const RecheckCase& of) {
    const Schedule& schedule = of.f.schedule;
    const AnnualMethod* method = of.rules.program->annual;
    const bool by_hud = of.f.insurance.months() > 0 && method->hud_balance != nullptr;
    std::vector<RecheckedMonth> months(1);
    Known known = known_of(of, months);
    months[0].balance = of.f.loan - of.f.cash[CashPart::principal_reduction];
    if (by_hud) {
        months[0].hud_balance_by = figure("loan");
        months[0].hud_balance = of.f.loan;
    }
    for (int month = 1; month <= last_row(of, by_hud); ++month) {
        const Money before = months.back().balance;
        const PaymentStep& step = schedule.step(std::min(month, schedule.months()));
        RecheckedMonth row;
        row.rate = step.rate;
        row.interest = cents_of(Int128{before.count()} * step.rate.millionths(),
                                Int128{Rate::monthly_denominator});
        const bool last = month == of.rules.scenario.term.count();
        const Money due = before + row.interest;
        row.payment = last ? due : std::min(step.payment, due);
        row.principal = row.payment - row.interest;
        row.balance = before - row.principal;
        if (by_hud) {
            known.last_month = month - 1;
            row.hud_balance_by = method->hud_balance(month - 1);
            row.hud_balance = reckon_money(row.hud_balance_by, known);
        }
        months.push_back(std::move(row));
    }
    insure(of, known, months);
    buy_down(of, months);
    return months;
}

} // namespace quoin
