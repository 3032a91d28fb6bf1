// Running a loan down, month by month, and proving each row by a way of its own.
#include <quoin/loan/schedule.hpp>

#include <algorithm>
#include <string>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/level_payment.hpp>

#include "rounded_interest.hpp"

namespace quoin {
namespace {

void ensure_terms(const LoanTerms& terms, Money payment, Money extra) {
    ensure(terms.loan >= Money{}, "a loan is not negative");
    ensure(shortest_term <= terms.term && terms.term <= longest_term, "a term has 1 to 480 months");
    ensure(payment >= Money{} && extra >= Money{}, "a payment is not negative");
}

/// What a run leaves besides the balances.
struct Run {
    int months = 0;
    Money last_payment;
};

/// Fills balances[1] onwards. Preconditions: balances[0] <= RoundedInterest::largest_balance, and
/// `paid` covers its interest, so that no balance is larger than the one before.
Run run_fast(Rate rate, int term, Money paid, Money* balances) {
    const RoundedInterest interest(rate, RoundedInterest::half);
    const auto pays = static_cast<std::uint64_t>(paid.count());
    auto balance = static_cast<std::uint64_t>(balances[0].count());
    std::uint64_t due = balance + interest(balance);
    int month = 1;
    for (; month < term && due > pays; ++month) {
        balance = due - pays;
        balances[month] = Money::cents(static_cast<std::int64_t>(balance));
        due = balance + interest(balance);
    }
    balances[month] = Money{};
    return {month, Money::cents(static_cast<std::int64_t>(due))};
}

/// The same in checked arithmetic, for any loan and any payment.
Run run_checked(Rate rate, int term, Money paid, Money* balances) {
    Money due = balances[0] + monthly_interest(balances[0], rate);
    int month = 1;
    for (; month < term && due > paid; ++month) {
        balances[month] = due - paid;
        due = balances[month] + monthly_interest(balances[month], rate);
    }
    balances[month] = Money{};
    return {month, due};
}

bool is_small(Money amount) {
    return amount.count() <= static_cast<std::int64_t>(RoundedInterest::largest_balance);
}

/// Whether `payment` takes `before` to `after` by interest of balance x rate / 12, rounded half
/// away from zero. By multiplication alone: 0 <= balance x rate + D/2 - interest x D < D.
bool is_right_row(Money before, Money after, Money payment, Rate rate) {
    constexpr Int128 D = Rate::monthly_denominator;
    const Int128 balance = before.count();
    const Int128 interest = Int128{payment.count()} + after.count() - balance;
    const Int128 rest = balance * rate.millionths() + D / 2 - interest * D;
    return before >= Money{} && after >= Money{} && rest >= 0 && rest < D;
}

/// The same for all rows under one payment at once, for balances under 2^33 cents. False where a
/// row is wrong or large. Unsigned, what would be negative is huge, and so it is refused: interest
/// x D stays under 2^64 - D.
bool are_small_right_rows(const Money* balances, std::size_t rows, Money paid, Rate rate) {
    constexpr auto D = RoundedInterest::denominator;
    constexpr int small_bits = 33;
    const auto pays = static_cast<std::uint64_t>(paid.count());
    const auto units = static_cast<std::uint64_t>(rate.millionths());
    auto before = static_cast<std::uint64_t>(balances[0].count());
    std::uint64_t bits = 0; // all that are set in any balance or interest
    std::uint64_t largest_rest = 0;
    for (std::size_t row = 1; row <= rows; ++row) {
        const auto after = static_cast<std::uint64_t>(balances[row].count());
        const std::uint64_t interest = pays + after - before;
        const std::uint64_t rest = before * units + D / 2 - interest * D;
        bits |= before | interest;
        largest_rest = std::max(largest_rest, rest);
        before = after;
    }
    return bits >> small_bits == 0 && largest_rest < D;
}

[[noreturn]] void throw_broken(const Schedule& schedule, std::size_t month, const char* promise) {
    const LoanTerms& terms = schedule.terms();
    throw Broken("schedule row " + std::to_string(month) + ": " + promise + " (loan $" +
                 terms.loan.text() + ", rate " + terms.rate.text() + " %, " +
                 std::to_string(terms.term.count()) + " months)");
}

} // namespace

Schedule amortize(const LoanTerms& terms, Money payment, Money extra) {
    ensure_terms(terms, payment, extra);
    Schedule schedule(terms, payment, extra);
    std::vector<Money>& balances = schedule.balances_;
    balances.resize(terms.loan.is_zero() ? 1 : static_cast<std::size_t>(terms.term.count()) + 1);
    balances[0] = terms.loan;
    if (!terms.loan.is_zero()) {
        const Money paid = payment + extra;
        const bool fast = is_small(terms.loan) && monthly_interest(terms.loan, terms.rate) <= paid;
        const auto run = fast ? run_fast : run_checked;
        const Run done = run(terms.rate, terms.term.count(), paid, balances.data());
        balances.resize(static_cast<std::size_t>(done.months) + 1);
        schedule.last_payment_ = done.last_payment;
    }
    check(schedule);
    return schedule;
}

Schedule amortize(const LoanTerms& terms) {
    return amortize(terms, level_payment(terms.loan, terms.rate, terms.term));
}

ScheduleRow Schedule::row(int month) const {
    ensure(1 <= month && month <= months(), "a schedule has rows 1 to its months");
    const Money principal = balance(month - 1) - balance(month);
    const Money payment = month == months() ? last_payment_ : payment_ + extra_;
    return {month, payment, payment - principal, principal, balance(month)};
}

Money Schedule::paid_through(int month) const {
    if (month < months()) return (payment_ + extra_) * month;
    return months() == 0 ? Money{} : (payment_ + extra_) * (months() - 1) + last_payment_;
}

void check(const Schedule& schedule) {
    const std::vector<Money>& balances = schedule.balances();
    const Rate rate = schedule.terms().rate;
    ensure(!balances.empty() && balances[0] == schedule.terms().loan,
           "a schedule starts at its loan");
    const std::size_t months = balances.size() - 1;
    if (!balances[months].is_zero()) throw_broken(schedule, months, "the last balance is not zero");
    if (months == 0) return;
    const Money paid = schedule.payment() + schedule.extra();
    std::size_t row = 1;
    if (are_small_right_rows(balances.data(), months - 1, paid, rate)) row = months;
    for (; row <= months; ++row) {
        const Money payment = row < months ? paid : schedule.last_payment();
        if (!is_right_row(balances[row - 1], balances[row], payment, rate)) {
            throw_broken(schedule, row, "interest is not balance x rate / 12");
        }
    }
}

} // namespace quoin
