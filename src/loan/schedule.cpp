// Running a loan down, month by month, and proving each row by a way of its own.
#include <quoin/loan/schedule.hpp>

#include <algorithm>
#include <string>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/level_payment.hpp>

#include "rounded_interest.hpp"

namespace quoin {
namespace {

void ensure_terms(const LoanTerms& terms, Money extra, Money at_closing) {
    ensure(terms.loan >= Money{}, "a loan is not negative");
    ensure(shortest_term <= terms.term && terms.term <= longest_term, "a term has 1 to 480 months");
    ensure(extra >= Money{}, "a payment is not negative");
    ensure(Money{} <= at_closing && at_closing <= terms.loan,
           "what is paid at closing is a part of the loan");
}

/// Payments `from` to `to` at one rate, as far as they go: up to `to`, or to the first that clears.
struct Stretch {
    int from = 1;
    int to = 1;
    Rate rate;
    Money paid; ///< each month
};

/// Where a stretch stopped, and what was due there.
struct Reached {
    int month = 0;
    Money due;
};

/// Fills balances[from] to balances[month - 1]. Preconditions: balances[from - 1] <=
/// RoundedInterest::largest_balance, and `paid` covers its interest, so that no balance is larger
/// than the one before.
Reached run_fast(const Stretch& stretch, Money* balances) {
    const RoundedInterest interest(stretch.rate, RoundedInterest::half);
    const auto pays = static_cast<std::uint64_t>(stretch.paid.count());
    auto balance = static_cast<std::uint64_t>(balances[stretch.from - 1].count());
    std::uint64_t due = balance + interest(balance);
    int month = stretch.from;
    for (; month < stretch.to && due > pays; ++month) {
        balance = due - pays;
        balances[month] = Money::cents(static_cast<std::int64_t>(balance));
        due = balance + interest(balance);
    }
    return {month, Money::cents(static_cast<std::int64_t>(due))};
}

/// The same in checked arithmetic, for any loan and any payment.
Reached run_checked(const Stretch& stretch, Money* balances) {
    const Money before = balances[stretch.from - 1];
    Money due = before + monthly_interest(before, stretch.rate);
    int month = stretch.from;
    for (; month < stretch.to && due > stretch.paid; ++month) {
        balances[month] = due - stretch.paid;
        due = balances[month] + monthly_interest(balances[month], stretch.rate);
    }
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
                 terms.loan.text() + ", rate " + terms.rate.text() + "%, " +
                 std::to_string(terms.term.count()) + " months)");
}

int end_of_step(const std::vector<PaymentStep>& steps, std::size_t i, int months) {
    return i + 1 < steps.size() ? std::min(steps[i + 1].from_payment - 1, months) : months;
}

} // namespace

/// Builds a schedule step by step, until a payment clears the loan.
class ScheduleRun {
  public:
    ScheduleRun(const LoanTerms& terms, Money extra, Money at_closing) {
        ensure_terms(terms, extra, at_closing);
        schedule_.terms_ = terms;
        schedule_.extra_ = extra;
        schedule_.at_closing_ = at_closing;
        const Money owed = terms.loan - at_closing;
        cleared_ = owed.is_zero();
        schedule_.balances_.resize(cleared_ ? 1 : static_cast<std::size_t>(terms.term.count()) + 1);
        schedule_.balances_[0] = owed;
    }

    [[nodiscard]] bool cleared() const { return cleared_; }
    [[nodiscard]] Money balance_before(int payment) const { return schedule_.balance(payment - 1); }

    /// Pays from step.from_payment up to and with payment `to`.
    void add(const PaymentStep& step, int to) {
        ensure(step.payment >= Money{}, "a payment is not negative");
        schedule_.steps_.push_back(step);
        if (cleared_) return;
        std::vector<Money>& balances = schedule_.balances_;
        const Stretch stretch{step.from_payment, to, step.rate, step.payment + schedule_.extra_};
        const Money before = balance_before(stretch.from);
        const bool fast =
            is_small(before) && monthly_interest(before, stretch.rate) <= stretch.paid;
        const Reached end = (fast ? run_fast : run_checked)(stretch, balances.data());
        cleared_ = to == schedule_.terms_.term.count() || end.due <= stretch.paid;
        balances[static_cast<std::size_t>(end.month)] = cleared_ ? Money{} : end.due - stretch.paid;
        if (!cleared_) return;
        balances.resize(static_cast<std::size_t>(end.month) + 1);
        schedule_.last_payment_ = end.due;
    }

    Schedule finish() {
        check(schedule_);
        return std::move(schedule_);
    }

  private:
    Schedule schedule_;
    bool cleared_ = false;
};

Schedule amortize(const LoanTerms& terms, Money payment, Money extra, Money at_closing) {
    ScheduleRun run(terms, extra, at_closing);
    run.add({1, terms.rate, payment}, terms.term.count());
    return run.finish();
}

Schedule amortize(const LoanTerms& terms) {
    return amortize(terms, level_payment(terms.loan, terms.rate, terms.term));
}

Schedule amortize(const LoanTerms& terms, std::span<const RateStep> path, Money extra,
                  Money at_closing) {
    ensure(!path.empty() && path.front().from_payment == 1, "a rate path starts with payment 1");
    const int term = terms.term.count();
    ScheduleRun run({terms.loan, path.front().rate, terms.term}, extra, at_closing);
    for (std::size_t i = 0; i < path.size() && (i == 0 || !run.cleared()); ++i) {
        const int from = path[i].from_payment;
        const int end = i + 1 < path.size() ? path[i + 1].from_payment : term + 1;
        ensure(from < end && end <= term + 1, "a rate path rises within the term");
        const Money level_on = i == 0 ? terms.loan : run.balance_before(from);
        const Money payment = level_payment(level_on, path[i].rate, Months(term + 1 - from));
        run.add({from, path[i].rate, payment}, end - 1);
    }
    return run.finish();
}

Schedule with_extra(const Schedule& schedule, Money extra) {
    const auto& steps = schedule.steps();
    const Money at_closing = schedule.at_closing();
    if (steps.size() == 1) {
        Schedule ahead = amortize(schedule.terms(), schedule.payment(), extra, at_closing);
        ensure((ahead.months() <= schedule.months() &&
                ahead.total_interest() <= schedule.total_interest()) ||
                   extra < schedule.extra(),
               "extra principal makes a loan neither longer nor dearer");
        return ahead;
    }
    std::vector<RateStep> path;
    for (const PaymentStep& step : steps) path.push_back({step.from_payment, step.rate});
    return amortize(schedule.terms(), path, extra, at_closing);
}

const PaymentStep& Schedule::step(int month) const {
    ensure(1 <= month && month <= months(), "a schedule has rows 1 to its months");
    const auto after = std::upper_bound(
        steps_.begin(), steps_.end(), month,
        [](int at_month, const PaymentStep& step) { return at_month < step.from_payment; });
    return *(after - 1);
}

Money Schedule::largest_payment() const {
    Money largest;
    for (const PaymentStep& step : steps_) largest = std::max(largest, step.payment);
    return largest;
}

ScheduleRow Schedule::row(int month) const {
    const Money level = step(month).payment; // first: it is what refuses a row that is not there
    const Money principal = balance(month - 1) - balance(month);
    const Money payment = month == months() ? last_payment_ : level + extra_;
    return {month, payment, payment - principal, principal, balance(month)};
}

std::vector<Money> Schedule::payments() const {
    std::vector<Money> paid;
    paid.reserve(balances_.size());
    for (std::size_t i = 0; i < steps_.size() && months() > 0; ++i) {
        const auto end = static_cast<std::size_t>(end_of_step(steps_, i, months()));
        paid.resize(end, steps_[i].payment + extra_);
    }
    if (!paid.empty()) paid.back() = last_payment_;
    return paid;
}

Money Schedule::paid_through(int month) const {
    ensure(month >= 0, "nothing is paid before a loan begins");
    const int level = std::min(month, months() - 1); // payments of a step's own amount
    Money paid;
    for (std::size_t i = 0; i < steps_.size() && steps_[i].from_payment <= level; ++i) {
        const int count = end_of_step(steps_, i, level) - steps_[i].from_payment + 1;
        paid += (steps_[i].payment + extra_) * count;
    }
    return month < months() ? paid : paid + last_payment_;
}

namespace {

/// The promise of the rows under one step, the loan's last row aside.
void check_step(const Schedule& schedule, std::size_t i) {
    const PaymentStep& step = schedule.steps()[i];
    const auto& balances = schedule.balances();
    const int end = end_of_step(schedule.steps(), i, schedule.months() - 1);
    if (end < step.from_payment) return;
    const auto from = static_cast<std::size_t>(step.from_payment);
    const auto last = static_cast<std::size_t>(end);
    const Money paid = step.payment + schedule.extra();
    if (are_small_right_rows(&balances[from - 1], last - from + 1, paid, step.rate)) return;
    for (std::size_t row = from; row <= last; ++row) {
        if (!is_right_row(balances[row - 1], balances[row], paid, step.rate)) {
            throw_broken(schedule, row, "interest is not balance x rate / 12");
        }
    }
}

} // namespace

void check(const Schedule& schedule) {
    const std::vector<Money>& balances = schedule.balances();
    ensure(!balances.empty(), "a schedule starts at a balance");
    ensure_equal(balances[0] + schedule.at_closing(), schedule.terms().loan,
                 "a schedule starts at its loan");
    const std::size_t months = balances.size() - 1;
    ensure(schedule.months() <= schedule.terms().term.count(), "a loan is paid within its term");
    if (!balances[months].is_zero()) throw_broken(schedule, months, "the last balance is not zero");
    if (months == 0) return;
    for (std::size_t i = 0; i < schedule.steps().size(); ++i) check_step(schedule, i);
    const Rate rate = schedule.step(schedule.months()).rate;
    if (!is_right_row(balances[months - 1], balances[months], schedule.last_payment(), rate)) {
        throw_broken(schedule, months, "interest is not balance x rate / 12");
    }
}

} // namespace quoin
