// Decimal: an exact decimal number with up to nine decimals, such as 6.125 or 0.0085.
//
// Kept as a whole number of billionths, so that adding and comparing are exact. It carries what is
// not money: percents, quantities, mills, measures. Range about +-9.2 thousand million.
//
//   Decimal::parse("6.125").value().text()  ->  "6.125"
//   Decimal::whole(3) > *Decimal::parse("2.999999999")
#pragma once

#include <compare>
#include <concepts>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include <quoin/exact/rounding.hpp>

namespace quoin {

class Decimal {
  public:
    static constexpr std::int64_t one = 1'000'000'000;
    static constexpr std::int64_t hundredth = one / 100;
    static constexpr std::int64_t millionth = one / 1'000'000;
    static constexpr int max_decimals = 9;

    constexpr Decimal() = default;

    static constexpr Decimal billionths(std::int64_t count) {
        Decimal d;
        d.count_ = count;
        return d;
    }
    static constexpr Decimal whole(std::int64_t number) {
        return billionths(multiply_divide(number, one, 1, Rounding::down));
    }
    template <std::floating_point Binary>
    static Decimal billionths(Binary) = delete;
    template <std::floating_point Binary>
    static Decimal whole(Binary) = delete;

    /// Reads a plain or exponent literal ("12", "-0.5", "1.5e3"), exactly or not at all: nothing
    /// where the text is no number, needs more than nine decimals, or leaves the range.
    static std::optional<Decimal> parse(std::string_view text);

    [[nodiscard]] constexpr std::int64_t billionths() const { return count_; }
    [[nodiscard]] constexpr bool is_whole() const { return count_ % one == 0; }
    [[nodiscard]] constexpr std::int64_t rounded(Rounding rounding) const {
        return divide_rounded(count_, one, rounding);
    }

    /// Shortest exact text: "6.125", "3", "-0.5".
    [[nodiscard]] std::string text() const;

    friend constexpr auto operator<=>(Decimal, Decimal) = default;
    friend constexpr Decimal operator+(Decimal a, Decimal b) {
        std::int64_t sum = 0;
        if (__builtin_add_overflow(a.count_, b.count_, &sum)) {
            throw Overflow("a sum of decimals is too large");
        }
        return billionths(sum);
    }
    friend constexpr Decimal operator-(Decimal a, Decimal b) {
        std::int64_t difference = 0;
        if (__builtin_sub_overflow(a.count_, b.count_, &difference)) {
            throw Overflow("a difference of decimals is too large");
        }
        return billionths(difference);
    }
    friend constexpr Decimal operator-(Decimal a) { return Decimal{} - a; }

  private:
    std::int64_t count_ = 0;
};

} // namespace quoin
