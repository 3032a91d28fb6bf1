// Running the schedule anew, its insurance from its own balances.
#include "ledger.hpp"

#include <algorithm>

namespace quoin {
namespace {

Money cents_of(Int128 top, Int128 bottom) {
    return Money::cents(
        static_cast<std::int64_t>(divide_rounded(top, bottom, Rounding::half_away)));
}

/// HUD's interest of a month: balance x percent to the cent, then / 1200 to the cent.
Money hud_interest(Money balance, Rate rate) {
    const Money twelve_hundredfold =
        cents_of(Int128{balance.count()} * rate.millionths(), 1'000'000);
    return cents_of(twelve_hundredfold.count(), 1200);
}

/// The average of a year's balances from row `first` on, x percent, to the cent.
Money year_premium(const std::vector<RecheckedMonth>& months, Money RecheckedMonth::*column,
                   std::size_t first, Percent annual) {
    Money sum;
    int count = 0;
    for (std::size_t row = first; row < std::min(first + 12, months.size() - 1); ++row) {
        sum += months[row].*column;
        ++count;
    }
    return cents_of(Int128{sum.count()} * annual.value().billionths(),
                    Int128{count} * 100 * Decimal::one);
}

class Insurer {
  public:
    Insurer(const RecheckCase& of, InsuranceForm form) : of_(of), form_(form) {}

    void run(std::vector<RecheckedMonth>& months) {
        const int last = of_.f.insurance.months();
        Money premium;
        for (std::size_t row = 1; row < months.size() && static_cast<int>(row) <= last; ++row) {
            if (row % 12 == 1) premium = monthly(months, row - 1);
            months[row].insurance = premium;
        }
    }

  private:
    [[nodiscard]] Money monthly(const std::vector<RecheckedMonth>& months,
                                std::size_t before) const {
        const LoanFigures& f = of_.f;
        if (form_ == InsuranceForm::level) {
            return cents_of(Int128{f.base_loan.count()} * f.annual_percent.value().billionths(),
                            Int128{1200} * Decimal::one);
        }
        if (form_ == InsuranceForm::usda) {
            return cents_of(
                year_premium(months, &RecheckedMonth::balance, before, f.annual_percent).count(),
                12);
        }
        const Percent financed = f.financed_fee.is_zero() ? Percent{} : f.upfront_percent;
        const Money whole =
            year_premium(months, &RecheckedMonth::hud_balance, before, f.annual_percent);
        const Money base = cents_of(Int128{whole.count()} * 100 * Decimal::one,
                                    100 * Decimal::one + financed.value().billionths());
        return cents_of(base.count(), 12);
    }

    const RecheckCase& of_;
    InsuranceForm form_;
};

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
int last_row(const RecheckCase& of, InsuranceForm form) {
    const int months = of.f.schedule.months();
    if (form != InsuranceForm::hud || of.f.cash.principal_reduction.is_zero()) return months;
    return std::max(months, std::min((of.f.insurance.months() + 11) / 12 * 12,
                                     of.rules.scenario->term.count()));
}

} // namespace

std::vector<RecheckedMonth> recheck_months(const RecheckCase& of, InsuranceForm form) {
    const Schedule& schedule = of.f.schedule;
    std::vector<RecheckedMonth> months(1);
    months[0].balance = of.f.loan - of.f.cash.principal_reduction;
    months[0].hud_balance = form == InsuranceForm::hud ? of.f.loan : Money{};
    for (int month = 1; month <= last_row(of, form); ++month) {
        const RecheckedMonth before = months.back();
        const PaymentStep& step = schedule.step(std::min(month, schedule.months()));
        RecheckedMonth row;
        row.rate = step.rate;
        row.interest = cents_of(Int128{before.balance.count()} * step.rate.millionths(),
                                Int128{Rate::monthly_denominator});
        const bool last = month == of.rules.scenario->term.count();
        const Money due = before.balance + row.interest;
        row.payment = last ? due : std::min(step.payment, due);
        row.principal = row.payment - row.interest;
        row.balance = before.balance - row.principal;
        if (form == InsuranceForm::hud) {
            const Money owed = before.hud_balance + hud_interest(before.hud_balance, of.f.rate);
            row.hud_balance = std::max(owed - schedule.payment(), Money{});
        }
        months.push_back(row);
    }
    Insurer(of, form).run(months);
    buy_down(of, months);
    return months;
}

} // namespace quoin
