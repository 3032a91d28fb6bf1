// What mortgage insurance costs each month, and the payment that ends it.
#include <quoin/loan/mortgage_insurance.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/level_payment.hpp>

#include "rounded_interest.hpp"

namespace quoin {
namespace {

constexpr int year = 12;
constexpr std::int64_t hundred_percent = 100 * Decimal::one;

/// The balances at the start of the months of one loan year.
struct YearOfBalances {
    Money sum;
    int months = 0; ///< twelve, or what is left of the loan

    void add(Money balance) {
        sum += balance;
        ++months;
    }
    /// Average x yearly percent, to the cent.
    [[nodiscard]] Money premium(Percent annual) const {
        return Money::cents(multiply_divide(sum.count(), annual.value().billionths(),
                                            months * hundred_percent, Rounding::half_away));
    }
};

/// HUD's interest of a month: balance x percent to the cent, then / 1200 to the cent.
Money hud_interest(Money balance, Rate rate) {
    const std::int64_t twelve_hundredfold =
        multiply_divide(balance.count(), rate.millionths(), 1'000'000, Rounding::half_away);
    return Money::cents(
        divide_rounded<std::int64_t>(twelve_hundredfold, 1200, Rounding::half_away));
}

/// The same as one division. For whole m and n, floor((floor(y) + m) / n) = floor((y + m) / n), so
/// floor((floor(bu / M + 1/2) + 600) / 1200) = floor((bu + M/2 + 600 M) / 1200 M), M a million.
constexpr std::uint64_t hud_offset = 500'000 + 600'000'000;

bool fits_one_division(Money loan, Money payment, Rate rate) {
    return loan.count() <= static_cast<std::int64_t>(RoundedInterest::largest_balance) &&
           hud_interest(loan, rate) <= payment;
}

/// Runs `loan` down under `interest` for up to `last` months, in whole loan years.
template <class Interest>
std::vector<YearOfBalances> years_of_balances(Money loan, Money payment, int last,
                                              Interest interest) {
    std::vector<YearOfBalances> years(static_cast<std::size_t>((last + year - 1) / year));
    Money balance = loan;
    int month = 0;
    for (YearOfBalances& in_year : years) {
        for (const int end = std::min(month + year, last); month < end && balance > Money{};
             ++month) {
            in_year.add(balance);
            balance = balance + interest(balance) - payment;
        }
    }
    while (!years.empty() && years.back().months == 0) years.pop_back();
    return years;
}

std::vector<YearOfBalances> hud_balances(const LoanTerms& terms, int last) {
    const Money payment = level_payment(terms.loan, terms.rate, terms.term);
    if (!fits_one_division(terms.loan, payment, terms.rate)) {
        return years_of_balances(terms.loan, payment, last,
                                 [&](Money balance) { return hud_interest(balance, terms.rate); });
    }
    const RoundedInterest interest(terms.rate, hud_offset);
    return years_of_balances(terms.loan, payment, last, [&](Money balance) {
        return Money::cents(
            static_cast<std::int64_t>(interest(static_cast<std::uint64_t>(balance.count()))));
    });
}

/// A year is averaged whole, though its premium may end within it.
int through_whole_year(Months duration, int term) {
    return std::min((duration.count() + year - 1) / year * year, term);
}

int months_in(const std::vector<YearOfBalances>& years) {
    return years.empty() ? 0 : year * (static_cast<int>(years.size()) - 1) + years.back().months;
}

bool has_balance_at_most(Money balance, Money value, int percent) {
    return Int128{balance.count()} * 100 <= Int128{value.count()} * percent;
}

/// The first payment, or 0 for the loan itself, that leaves at most `percent` of `value`.
int first_at_most(const Schedule& schedule, Money value, int percent) {
    int month = 0;
    while (month < schedule.months() &&
           !has_balance_at_most(schedule.balance(month), value, percent)) {
        ++month;
    }
    return month;
}

} // namespace

MonthlyPremium::MonthlyPremium(std::vector<Money> yearly, int months)
    : yearly_(std::move(yearly)), months_(months) {
    ensure(months >= 0 && (months == 0 || !yearly_.empty()),
           "a premium that is paid has an amount");
}

Money MonthlyPremium::in_month(int month) const {
    if (month < 1 || month > months_) return Money{};
    const auto index = static_cast<std::size_t>((month - 1) / year);
    return yearly_[std::min(index, yearly_.size() - 1)];
}

Money MonthlyPremium::paid_through(int month) const {
    const int last = std::min(month, months_);
    Money paid;
    for (int first = 1; first <= last; first += year) {
        paid += in_month(first) * std::min(year, last - first + 1);
    }
    return paid;
}

MonthlyPremium MonthlyPremium::ended_by(int last) const {
    MonthlyPremium ended = *this;
    ended.months_ = std::min(months_, last);
    return ended;
}

MonthlyPremium hud_annual_premium(const LoanTerms& total_loan, Percent annual,
                                  Percent upfront_financed, Months duration) {
    const auto years =
        hud_balances(total_loan, through_whole_year(duration, total_loan.term.count()));
    const std::int64_t with_upfront = hundred_percent + upfront_financed.value().billionths();
    std::vector<Money> monthly;
    monthly.reserve(years.size());
    for (const YearOfBalances& in_year : years) {
        const std::int64_t base = multiply_divide(in_year.premium(annual).count(), hundred_percent,
                                                  with_upfront, Rounding::half_away);
        monthly.push_back(part_of(Money::cents(base), year, Rounding::half_away));
    }
    return {std::move(monthly), std::min(duration.count(), months_in(years))};
}

MonthlyPremium usda_annual_fee(const Schedule& schedule, Percent annual, Months duration) {
    std::vector<Money> monthly;
    const int months = std::min(duration.count(), schedule.months());
    for (int first = 0; first < months; first += year) {
        YearOfBalances in_year;
        const int end = std::min(first + year, schedule.months());
        for (int month = first; month < end; ++month) in_year.add(schedule.balance(month));
        monthly.push_back(part_of(in_year.premium(annual), year, Rounding::half_away));
    }
    return {std::move(monthly), months};
}

MonthlyPremium level_premium(Money loan, Percent annual, int months) {
    const std::int64_t monthly = multiply_divide(loan.count(), annual.value().billionths(),
                                                 year * hundred_percent, Rounding::half_away);
    return {{Money::cents(monthly)}, months};
}

InsuranceEnd insurance_end(const Schedule& initial, const Schedule& paid, Money value) {
    const InsuranceEnd end{first_at_most(paid, value, 80), first_at_most(initial, value, 78),
                           (initial.terms().term.count() + 1) / 2};
    ensure(end.on_request <= end.automatic || initial.steps().size() > 1,
           "insurance that is asked off ends no later than it does by itself");
    return end;
}

} // namespace quoin
