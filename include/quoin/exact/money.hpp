// Money: a whole number of cents in 64 bits, with checked arithmetic.
//
// Money adds to money and is multiplied by a count; anything finer (a percent, a rate, a unit price
// times 317.5 sq ft) goes through a named function that says how it rounds. Never made from a
// binary fraction.
//
//   Money price = Money::parse("412900").value();       // 41290000 cents
//   price + Money::dollars(250)                          // $413,150.00
//   percent_of(price, Percent(*Decimal::parse("3.5")), Rounding::down)
#pragma once

#include <compare>
#include <concepts>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include <quoin/exact/decimal.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/rounding.hpp>

namespace quoin {

class Money {
  public:
    constexpr Money() = default;

    static constexpr Money cents(std::int64_t count) {
        Money m;
        m.count_ = count;
        return m;
    }
    static constexpr Money dollars(std::int64_t number) {
        return cents(multiply_divide(number, 100, 1, Rounding::down));
    }
    template <std::floating_point Binary>
    static Money cents(Binary) = delete; ///< 19.99 would lose what it means
    template <std::floating_point Binary>
    static Money dollars(Binary) = delete;

    /// Reads "1580.17", "-250", "$1,580.17"; nothing where the text is no amount, has more than two
    /// decimals, or misplaced thousands commas.
    static std::optional<Money> parse(std::string_view text);

    [[nodiscard]] constexpr std::int64_t count() const { return count_; } ///< in cents
    [[nodiscard]] constexpr bool is_zero() const { return count_ == 0; }

    /// The wire form: "1580.17", "-250.00".
    [[nodiscard]] std::string text() const;

    friend constexpr auto operator<=>(Money, Money) = default;
    friend constexpr Money operator+(Money a, Money b) {
        std::int64_t sum = 0;
        if (__builtin_add_overflow(a.count_, b.count_, &sum)) {
            throw Overflow("a sum of money is too large");
        }
        return cents(sum);
    }
    friend constexpr Money operator-(Money a, Money b) {
        std::int64_t difference = 0;
        if (__builtin_sub_overflow(a.count_, b.count_, &difference)) {
            throw Overflow("a difference of money is too large");
        }
        return cents(difference);
    }
    friend constexpr Money operator-(Money a) { return Money{} - a; }
    template <std::integral Count>
    requires(!std::same_as<Count, bool>) friend constexpr Money operator*(Money a, Count count) {
        std::int64_t product = 0;
        if (__builtin_mul_overflow(a.count_, count, &product)) {
            throw Overflow("a multiple of money is too large");
        }
        return cents(product);
    }
    constexpr Money& operator+=(Money other) { return *this = *this + other; }
    constexpr Money& operator-=(Money other) { return *this = *this - other; }

  private:
    std::int64_t count_ = 0;
};

/// amount x percent / 100, to the cent.
[[nodiscard]] constexpr Money percent_of(Money amount, Percent percent, Rounding rounding) {
    return Money::cents(multiply_divide(amount.count(), percent.value().billionths(),
                                        100 * Decimal::one, rounding));
}

/// amount x quantity, to the cent.
[[nodiscard]] constexpr Money times(Money amount, Decimal quantity, Rounding rounding) {
    return Money::cents(
        multiply_divide(amount.count(), quantity.billionths(), Decimal::one, rounding));
}

/// amount x rate / 1000, to the cent: mill levies and prices per thousand.
[[nodiscard]] constexpr Money per_thousand_of(Money amount, Decimal rate, Rounding rounding) {
    return Money::cents(
        multiply_divide(amount.count(), rate.billionths(), 1000 * Decimal::one, rounding));
}

/// One of `parts` equal parts, to the cent.
[[nodiscard]] constexpr Money part_of(Money amount, std::int64_t parts, Rounding rounding) {
    return Money::cents(divide_rounded(amount.count(), parts, rounding));
}

/// The amount without its cents.
[[nodiscard]] constexpr Money to_dollars(Money amount, Rounding rounding) {
    return Money::dollars(divide_rounded<std::int64_t>(amount.count(), 100, rounding));
}

} // namespace quoin
