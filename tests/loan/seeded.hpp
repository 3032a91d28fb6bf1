// Loans drawn from a fixed seed: the same on every machine, never from a clock.
#pragma once

#include <cstdint>
#include <random>

#include <quoin/loan/schedule.hpp>

namespace quoin {

class Seeded {
  public:
    explicit Seeded(std::uint64_t seed) : random_(seed) {}

    /// A whole number of low to high. The remainder's bias does not matter here.
    std::int64_t between(std::int64_t low, std::int64_t high) {
        return low +
               static_cast<std::int64_t>(random_() % static_cast<std::uint64_t>(high - low + 1));
    }
    /// 1 cent to `most`, every order of magnitude alike.
    Money loan(std::int64_t most) {
        std::int64_t top = most;
        for (auto halvings = between(0, 40); halvings > 0 && top > 1; --halvings) top /= 2;
        return Money::cents(between(1, top));
    }
    Rate eighth() { return Rate::millionths(between(0, 200) * 125'000); } ///< 0 to 25%
    Rate any_rate() { return Rate::millionths(between(0, 25'000'000)); }  ///< 0 to 25%
    Months any_term() { return Months(static_cast<int>(between(1, 480))); }
    Months home_term() { return Months(static_cast<int>(60 * between(1, 8))); }

    /// Half of them as homes are sold, half anything at all.
    LoanTerms terms() {
        if (between(0, 1) == 0) return {loan(200'000'000), eighth(), home_term()};
        return {loan(1'000'000'000'000), any_rate(), any_term()};
    }

  private:
    std::mt19937_64 random_;
};

} // namespace quoin
