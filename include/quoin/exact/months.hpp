// Months: a count of months: a loan's term, the life of a premium, a point in a schedule.
#pragma once

#include <compare>
#include <concepts>

namespace quoin {

inline constexpr int months_a_year = 12;

class Months {
  public:
    constexpr Months() = default;
    constexpr explicit Months(int count) : count_(count) {}
    template <std::floating_point Binary>
    explicit Months(Binary) = delete;
    [[nodiscard]] static constexpr Months years(int count) { return Months(months_a_year * count); }
    template <std::floating_point Binary>
    static Months years(Binary) = delete;

    [[nodiscard]] constexpr int count() const { return count_; }

    friend constexpr auto operator<=>(Months, Months) = default;
    friend constexpr Months operator+(Months a, Months b) { return Months(a.count_ + b.count_); }
    friend constexpr Months operator-(Months a, Months b) { return Months(a.count_ - b.count_); }

  private:
    int count_ = 0;
};

/// Terms that quoin works with, in months.
inline constexpr Months shortest_term{1};
inline constexpr Months longest_term{480};

} // namespace quoin
