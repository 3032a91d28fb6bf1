// The level payment in binary floating point, with a proven bound on its error.
//
// The only file of quoin that computes with binary fractions: it proposes a whole number of cents,
// and withholds it unless the bound shows that the exact value rounds to the same number.
#include <quoin/loan/level_payment.hpp>

#include <cmath>
#include <limits>

#ifdef __FAST_MATH__
#error "the error bound below needs IEEE arithmetic: build this file without -ffast-math"
#endif

namespace quoin {
namespace {

static_assert(std::numeric_limits<double>::is_iec559 && std::numeric_limits<double>::digits == 53);

// With x = 1 + r = A/B (A and B whole, both exact in a double), q = x^n, d = q - 1 and I = P r, the
// payment is M = I + I/d: no term is subtracted from another of its size but for d itself.
// Write e for 2^-52. Each operation below yields its exact result times (1 + t), |t| <= e; that is
// twice the error of rounding to nearest, so it holds in every rounding direction, and an operation
// fused with its neighbour only has fewer errors.
//
//   x      one division:                                        1 error
//   q      k-th power by products of lower ones: 2k - 1 errors, since (2i-1) + (2j-1) + 1 = 2k - 1.
//          So q^ = q (1 + s), |s| <= S = 1.0001 (2n - 1) e for n <= 480.
//   d      d^ = (q (1 + s) - 1)(1 + t) = d (1 + s q/d)(1 + t)
//   I      a product and a division:                            2 errors
//   I/d    one more division;  its share of M is 1/q, for M = I q/d, so the error of d moves
//          M by at most S (q/d)(1/q) = S/d, relatively, and by e for the (1 + t) of d^
//   M      one sum:                                             1 error
//
// Together |M^ - M| <= M (S/d + 5e) up to products of errors. Those stay under a millionth of the
// sum because d >= 2^-20 is required, which keeps S q/d under 3e-7. The bound below takes
// 2n e/d + 6e, times 1.01 for these and for its own roundings and for d^ and M^ in place of d, M.
constexpr double error_unit = std::numeric_limits<double>::epsilon();
constexpr double smallest_growth = 1.0 / (1 << 20);
constexpr std::int64_t largest_exact = std::int64_t{1} << 53;

double power(double base, int exponent) {
    double result = 1.0;
    for (; exponent > 1; exponent /= 2) {
        if (exponent % 2 != 0) result *= base;
        base *= base;
    }
    return result * base;
}

} // namespace

std::optional<Money> level_payment_fast(Money loan, Rate rate, Months term) {
    const int n = term.count();
    if (n < shortest_term.count() || n > longest_term.count()) return std::nullopt;
    if (loan < Money{} || loan.count() > largest_exact) return std::nullopt;

    constexpr auto B = static_cast<double>(Rate::monthly_denominator);
    const auto units = static_cast<double>(rate.millionths());
    const double growth = power((B + units) / B, n) - 1.0;
    if (growth < smallest_growth) return std::nullopt; // a rate of zero, or next to it

    const double interest = static_cast<double>(loan.count()) * units / B;
    const double payment = interest + interest / growth;
    const double bound = 1.01 * error_unit * payment * (2 * n / growth + 6);

    const double below = std::floor(payment); // exact, as is the fraction above it
    const double from_tie = std::abs(payment - below - 0.5);
    if (!(from_tie > bound)) return std::nullopt;
    return Money::cents(static_cast<std::int64_t>(payment - below < 0.5 ? below : below + 1));
}

} // namespace quoin
