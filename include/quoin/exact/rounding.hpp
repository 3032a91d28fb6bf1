// How a figure becomes a whole number of its unit: every rounding in quoin names its direction.
//
//   divide_rounded(5, 2, Rounding::half_away)   ->  3        divide_rounded(-5, 2, half_away) -> -3
//   divide_rounded(5, 2, Rounding::down)        ->  2        divide_rounded(-5, 2, down)      -> -2
#pragma once

#include <cstdint>
#include <stdexcept>

namespace quoin {

__extension__ using Int128 = __int128;

enum class Rounding {
    half_away, ///< to the nearest; a tie goes away from zero: 2.5 -> 3, -2.5 -> -3
    down,      ///< towards zero: 2.9 -> 2, -2.9 -> -2
    up,        ///< away from zero: 2.1 -> 3, -2.1 -> -3
};

/// A sum or product that leaves the range of its type. Never wraps; the message names the
/// operation.
class Overflow : public std::overflow_error {
  public:
    using std::overflow_error::overflow_error;
};

/// numerator / denominator as a whole number. Precondition: denominator > 0.
template <class Int>
[[nodiscard]] constexpr Int divide_rounded(Int numerator, Int denominator, Rounding rounding) {
    const Int quotient = numerator / denominator;
    const Int rest = numerator % denominator;
    const Int size = rest < 0 ? -rest : rest;
    const bool away = rounding == Rounding::half_away ? size >= denominator - size
                                                      : rounding == Rounding::up && size != 0;
    if (!away) return quotient;
    return numerator < 0 ? quotient - 1 : quotient + 1;
}

/// a * b / denominator, rounded once; the product is formed in full. Throws Overflow where the
/// result leaves 64 bits. Precondition: denominator > 0.
[[nodiscard]] constexpr std::int64_t multiply_divide(std::int64_t a, std::int64_t b,
                                                     std::int64_t denominator, Rounding rounding) {
    std::int64_t narrow = 0;
    if (!__builtin_mul_overflow(a, b, &narrow)) {
        return divide_rounded<std::int64_t>(narrow, denominator, rounding);
    }
    const Int128 wide = divide_rounded<Int128>(Int128{a} * b, denominator, rounding);
    const auto result = static_cast<std::int64_t>(wide);
    if (result != wide) throw Overflow("a product is too large for 64 bits");
    return result;
}

} // namespace quoin
