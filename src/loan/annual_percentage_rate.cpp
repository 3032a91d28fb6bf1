// Present values in 62-bit fixed point, the rate sought by Newton's method and proven on both
// sides.
//
// Error. step and every product are cut to 62 bits after the point, so that the factor of k months
// is less than 2k of those bits too low (see net_value.cpp), and a present value less than
// 2 n C 2^-62 cents for payments of C cents in all over n months: under 2^-25 cents for any home
// loan, where one millionth of a percent moves the value by 2^-18 cents and more. Where that bound
// leaves a side open, exact fractions decide; so the rate is always right to its last digit.
#include <quoin/loan/annual_percentage_rate.hpp>

#include <algorithm>

#include "net_value.hpp"
#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

__extension__ using UInt128 = unsigned __int128;
constexpr int fraction_bits = 62;
constexpr std::int64_t monthly_units =
    Rate::monthly_denominator; ///< a monthly rate is millionths / monthly_units

/// A loan whose sums stay within 128 bits: any of fewer than a hundred million million dollars.
constexpr std::int64_t most_cents = std::int64_t{1} << 53;
constexpr int most_months = 1 << 10;
constexpr std::int64_t no_guess = -1;

struct Worth {
    UInt128 sum = 0;      ///< of payments x discount factor, in cents x 2^62
    UInt128 weighted = 0; ///< of those x months
};

class MonthlyLoan {
  public:
    MonthlyLoan(Money financed, std::span<const Money> payments, FirstPeriod first);

    [[nodiscard]] Money paid() const { return paid_; }
    /// Whether the payments are worth at least the amount financed at a rate.
    [[nodiscard]] bool pays_back(std::int64_t millionths, const Worth& worth) const;
    [[nodiscard]] Worth worth(std::int64_t millionths) const;
    [[nodiscard]] std::int64_t first_guess() const;
    [[nodiscard]] std::int64_t next_guess(std::int64_t millionths, const Worth& worth) const;

  private:
    [[nodiscard]] UInt128 target(std::int64_t millionths) const;
    [[nodiscard]] bool pays_back_exactly(std::int64_t millionths) const;

    Money financed_;
    std::span<const Money> payments_;
    FirstPeriod first_;
    Money paid_;
    int last_month_;
    bool fits_;
};

MonthlyLoan::MonthlyLoan(Money financed, std::span<const Money> payments, FirstPeriod first)
    : financed_(financed), payments_(payments), first_(first),
      last_month_(first.months + static_cast<int>(payments.size()) - 1) {
    ensure(first.months >= 0 && first.odd_days >= 0, "a first payment is not before the advance");
    for (const Money payment : payments) {
        ensure(payment >= Money{}, "a payment is not negative");
        paid_ += payment;
    }
    const Money most = Money::cents(most_cents);
    fits_ = financed <= most && paid_ <= most && last_month_ <= most_months;
}

Worth MonthlyLoan::worth(std::int64_t millionths) const {
    if (!fits_) return {};
    const auto step = static_cast<std::uint64_t>((UInt128{monthly_units} << fraction_bits) /
                                                 static_cast<UInt128>(monthly_units + millionths));
    std::uint64_t factor = std::uint64_t{1} << fraction_bits;
    const auto go_on = [&] {
        factor = static_cast<std::uint64_t>((UInt128{factor} * step) >> fraction_bits);
    };
    for (int month = 0; month < first_.months; ++month) go_on();
    Worth worth;
    UInt128 sums = 0; // of the sums before each payment: what the last month weighs too much
    for (const Money payment : payments_) {
        sums += worth.sum;
        worth.sum += UInt128{factor} * static_cast<std::uint64_t>(payment.count());
        go_on();
    }
    worth.weighted = worth.sum * static_cast<UInt128>(last_month_) - sums;
    return worth;
}

/// The amount financed with simple interest for the odd days, in cents x 2^62, cut down.
UInt128 MonthlyLoan::target(std::int64_t millionths) const {
    const auto odd = static_cast<UInt128>(first_.odd_days) * static_cast<UInt128>(millionths);
    const UInt128 interest = static_cast<UInt128>(financed_.count()) * odd;
    const UInt128 whole = 30 * UInt128{monthly_units};
    return ((static_cast<UInt128>(financed_.count()) + interest / whole) << fraction_bits) +
           ((interest % whole) << fraction_bits) / whole;
}

bool MonthlyLoan::pays_back(std::int64_t millionths, const Worth& worth) const {
    if (!fits_) return pays_back_exactly(millionths);
    const UInt128 needed = target(millionths);
    const UInt128 error =
        2 * static_cast<UInt128>(last_month_) * static_cast<UInt128>(paid_.count());
    if (worth.sum > needed) return true; // both are cut, the sum further
    if (worth.sum + error < needed) return false;
    return pays_back_exactly(millionths);
}

bool MonthlyLoan::pays_back_exactly(std::int64_t millionths) const {
    ActuarialProblem problem;
    problem.advances = {{financed_, 0, {}, 1}};
    int month = first_.months;
    for (const Money payment : payments_) {
        problem.payments.push_back({payment, month++, {first_.odd_days, 30}, 1});
    }
    return NetValue(problem).exact_sign(millionths * (units_per_percent / 1'000'000)) <= 0;
}

/// From the level payment's n i / (1 - (1 + i)^-n), cut after its third term.
std::int64_t MonthlyLoan::first_guess() const {
    const Int128 charge = paid_.count() - financed_.count();
    const Int128 spread = Int128{last_month_ + 1} * (2 * Int128{financed_.count()} + paid_.count());
    return static_cast<std::int64_t>(6 * charge * monthly_units / spread);
}

/// A step of Newton's method. Its precision does not matter: what it finds is proven afterwards.
std::int64_t MonthlyLoan::next_guess(std::int64_t millionths, const Worth& worth) const {
    if (!fits_) return no_guess;
    constexpr int spare_bits = 26; // so that gap x rate stays within 127 bits
    const UInt128 needed = target(millionths);
    const UInt128 slope =
        (worth.weighted + needed / 30 * static_cast<UInt128>(first_.odd_days)) >> spare_bits;
    const auto gap = static_cast<Int128>(worth.sum) - static_cast<Int128>(needed);
    if (slope == 0) return no_guess;
    const Int128 change =
        (gap >> spare_bits) * (monthly_units + millionths) / static_cast<Int128>(slope);
    return static_cast<std::int64_t>(std::clamp<Int128>(millionths + change, 0, INT32_MAX));
}

} // namespace

FirstPeriod first_period(Date advance, Date first_payment) {
    ensure(advance <= first_payment, "an advance is not after the first payment");
    FirstPeriod period{0, 0};
    while (plus_months(first_payment, Months(-period.months - 1)) >= advance) ++period.months;
    period.odd_days = days_between(advance, plus_months(first_payment, Months(-period.months)));
    ensure(0 <= period.odd_days && period.odd_days < 31, "odd days are less than a month");
    return period;
}

std::optional<Rate> annual_percentage_rate(Money amount_financed, std::span<const Money> payments,
                                           FirstPeriod first) {
    if (amount_financed <= Money{}) return std::nullopt;
    const MonthlyLoan loan(amount_financed, payments, first);
    if (loan.paid() < amount_financed) return std::nullopt;
    constexpr int newton_steps = 16; // far more than a loan takes; then halving
    std::int64_t low = 0;            // pays back here, and no longer at `high` once it was tried
    std::int64_t high = Rate::max_millionths + 1;
    std::int64_t guess = loan.first_guess();
    for (int step = 0; high - low > 1; ++step) {
        const bool halve = step >= newton_steps || guess == no_guess;
        const std::int64_t at =
            halve ? low + (high - low) / 2 : std::clamp(guess, low + 1, high - 1);
        const Worth worth = loan.worth(at);
        (loan.pays_back(at, worth) ? low : high) = at;
        guess = loan.next_guess(at, worth);
    }
    const bool tried = high <= Rate::max_millionths;
    if (!tried && loan.pays_back(high, loan.worth(high))) return std::nullopt;
    return Rate::millionths(low);
}

} // namespace quoin
