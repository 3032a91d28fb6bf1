// Percent, Points and Ltv: three decimals that must not be mistaken for one another.
//
//   Percent  a share of any base: 3.5% down, a 1.75% premium
//   Points   a share of the loan paid for a rate; negative points are a credit
//   Ltv      base loan over value, in percent, truncated to two decimals
//
//   Percent(*Decimal::parse("3.5")) + Percent(*Decimal::parse("1"))   compiles
//   Percent(...) + Points(...)                                         does not
#pragma once

#include <compare>

#include <quoin/exact/decimal.hpp>

namespace quoin {

/// A decimal with a meaning: compares and adds only with its own kind.
template <class Meaning>
class Measured {
  public:
    constexpr Measured() = default;
    constexpr explicit Measured(Decimal value) : value_(value) {}

    [[nodiscard]] constexpr Decimal value() const { return value_; }

    friend constexpr auto operator<=>(Measured, Measured) = default;
    friend constexpr Measured operator+(Measured a, Measured b) {
        return Measured(a.value_ + b.value_);
    }
    friend constexpr Measured operator-(Measured a, Measured b) {
        return Measured(a.value_ - b.value_);
    }

  private:
    Decimal value_;
};

using Percent = Measured<struct PercentMeaning>;
using Points = Measured<struct PointsMeaning>;
using Ltv = Measured<struct LtvMeaning>;

inline constexpr Percent hundred_percent{Decimal::whole(100)};

} // namespace quoin
