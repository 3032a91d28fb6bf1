// The slow and obvious way to each figure of a loan, in exact fractions: what the tests believe.
#pragma once

#include <vector>

#include <boost/multiprecision/cpp_int.hpp>

#include <quoin/loan/schedule.hpp>

namespace quoin::oracle {

using Whole = boost::multiprecision::cpp_int;
using Fraction = boost::multiprecision::cpp_rational;

/// To the nearest whole number, a tie upwards. Precondition: value >= 0.
inline Whole nearest(const Fraction& value) {
    const Fraction raised = value + Fraction(1, 2);
    return numerator(raised) / denominator(raised);
}

inline Money to_money(const Whole& cents) { return Money::cents(static_cast<std::int64_t>(cents)); }

inline Fraction monthly_rate(Rate rate) { return Fraction(rate.millionths(), 1'200'000'000); }

/// What a loan of one cent pays, top / bottom, in no lowest terms.
struct Quotient {
    Whole top;
    Whole bottom;

    /// The payment of a loan in cents, to the nearest, a tie upwards.
    [[nodiscard]] Money payment(Money loan) const {
        return to_money((top * loan.count() * 2 + bottom) / (bottom * 2));
    }
};

/// 1 / (v + v^2 + ... + v^n): each payment discounted by v = 1 / (1 + r) a month. No closed form,
/// and no special case for a rate of zero.
inline Quotient discounted(Rate rate, Months term) {
    const Fraction growth = 1 + monthly_rate(rate);
    const Whole a = numerator(growth);
    const Whole b = denominator(growth);
    Whole a_to_n = 1; // v + ... + v^n is sum / a^n
    Whole b_to_n = 1;
    Whole sum = 0;
    for (int month = 1; month <= term.count(); ++month) {
        a_to_n *= a;
        b_to_n *= b;
        sum = sum * a + b_to_n;
    }
    return {a_to_n, sum};
}

/// Rows of a schedule: interest to the cent, a payment that never takes more than is due, and a
/// last one that takes all of it.
inline std::vector<ScheduleRow> schedule(const LoanTerms& terms, Money payment, Money extra) {
    std::vector<ScheduleRow> rows;
    const Fraction rate = monthly_rate(terms.rate);
    const Whole paid = Whole(payment.count()) + extra.count();
    Whole balance = terms.loan.count();
    for (int month = 1; month <= terms.term.count() && balance > 0; ++month) {
        const Whole interest = nearest(balance * rate);
        const Whole due = balance + interest;
        const Whole taken = month == terms.term.count() || due < paid ? due : paid;
        balance = due - taken;
        rows.push_back({month, to_money(taken), to_money(interest), to_money(taken - interest),
                        to_money(balance)});
    }
    return rows;
}

} // namespace quoin::oracle
