// The level payment as one quotient of whole numbers, rounded once.
#include <quoin/loan/level_payment.hpp>

#include <numeric>

#include <boost/multiprecision/cpp_int.hpp>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

using boost::multiprecision::cpp_int;

/// The payment of a loan of one cent, as a fraction: what all loans of a rate and a term share.
struct Factor {
    cpp_int numerator;
    cpp_int denominator;
};

// With the monthly growth 1 + r = a/b in lowest terms, P r (1+r)^n / ((1+r)^n - 1) is
// P (a - b) a^n / (b (a^n - b^n)). A rate of zero leaves P / n.
Factor factor(Rate rate, Months term) {
    ensure(shortest_term <= term && term <= longest_term, "a term has 1 to 480 months");
    if (rate == Rate{}) return {1, term.count()};
    const std::int64_t common = std::gcd(rate.millionths(), Rate::monthly_denominator);
    const cpp_int b = Rate::monthly_denominator / common;
    const cpp_int a = b + rate.millionths() / common;
    const auto n = static_cast<unsigned>(term.count());
    const cpp_int grown = pow(a, n);
    return {(a - b) * grown, b * (grown - pow(b, n))};
}

/// Half away from zero: floor((2 loan N + D) / 2 D).
Money rounded_payment(Money loan, const Factor& factor) {
    ensure(loan >= Money{}, "a loan is not negative");
    const cpp_int doubled = 2 * factor.denominator;
    const cpp_int cents = (factor.numerator * loan.count() * 2 + factor.denominator) / doubled;
    if (cents > INT64_MAX) throw Overflow("a level payment is too large");
    return Money::cents(static_cast<std::int64_t>(cents));
}

} // namespace

Money level_payment_exact(Money loan, Rate rate, Months term) {
    return rounded_payment(loan, factor(rate, term));
}

std::vector<Money> level_payments_exact(std::span<const Money> loans, Rate rate, Months term) {
    const Factor shared = factor(rate, term);
    std::vector<Money> payments;
    payments.reserve(loans.size());
    for (const Money loan : loans) payments.push_back(rounded_payment(loan, shared));
    return payments;
}

} // namespace quoin
