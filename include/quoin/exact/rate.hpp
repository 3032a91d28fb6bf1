// Rate: a yearly note rate, exact to a millionth of a percent.
//
// The monthly rate is the yearly one over twelve and is never rounded: interest of a month is
// balance x millionths / monthly_denominator, rounded once to the cent.
//
//   Rate r = Rate::percent(*Decimal::parse("6.125")).value();   r.millionths() -> 6125000
//   monthly_interest(Money::dollars(200000), r)                  -> $1,020.83
#pragma once

#include <compare>
#include <concepts>
#include <cstdint>
#include <optional>
#include <string>

#include <quoin/exact/decimal.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/rounding.hpp>

namespace quoin {

class Rate {
  public:
    /// millionths of a percent x months of a year x 100%.
    static constexpr std::int64_t monthly_denominator = 1'200'000'000;
    static constexpr std::int64_t max_millionths = 100'000'000; ///< 100% a year

    constexpr Rate() = default;

    /// A rate of 0 to 100 percent with at most six decimals, or nothing.
    static constexpr std::optional<Rate> percent(Decimal value) {
        const std::int64_t count = value.billionths();
        if (count < 0 || count % 1000 != 0 || count / 1000 > max_millionths) return std::nullopt;
        return millionths(count / 1000);
    }
    /// Precondition: 0 <= count <= max_millionths.
    static constexpr Rate millionths(std::int64_t count) {
        Rate r;
        r.count_ = count;
        return r;
    }
    template <std::floating_point Binary>
    static Rate millionths(Binary) = delete;

    [[nodiscard]] constexpr std::int64_t millionths() const { return count_; }
    [[nodiscard]] constexpr Decimal percent() const { return Decimal::billionths(count_ * 1000); }
    [[nodiscard]] std::string text() const { return percent().text(); }

    friend constexpr auto operator<=>(Rate, Rate) = default;

  private:
    std::int64_t count_ = 0;
};

/// Interest of one month on a balance, half away from zero to the cent.
[[nodiscard]] constexpr Money monthly_interest(Money balance, Rate rate) {
    return Money::cents(multiply_divide(balance.count(), rate.millionths(),
                                        Rate::monthly_denominator, Rounding::half_away));
}

} // namespace quoin
