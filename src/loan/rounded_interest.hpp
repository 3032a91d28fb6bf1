// The interest of a month in one multiplication, exact for balances of up to $153 million.
//
// Interest is floor((balance x rate + offset) / D), with D = Rate::monthly_denominator. Instead of
// dividing, multiply by the reciprocal K = ceil(rate x 2^64 / D) and C = ceil(offset x 2^64 / D):
// (balance x K + C) / 2^64 lies above the true quotient by less than (balance + 1) / 2^64. The true
// quotient is a multiple of 1/D, so where balance + 1 <= 2^64 / D both have the same floor.
#pragma once

#include <cstdint>

#include <quoin/exact/rate.hpp>

namespace quoin {

class RoundedInterest {
  public:
    static constexpr auto denominator = static_cast<std::uint64_t>(Rate::monthly_denominator);
    /// The offset that rounds half away from zero, to the cent.
    static constexpr std::uint64_t half = denominator / 2;
    static constexpr std::uint64_t largest_balance = UINT64_MAX / denominator - 1; ///< in cents

    RoundedInterest(Rate rate, std::uint64_t offset)
        : reciprocal_(shifted(static_cast<std::uint64_t>(rate.millionths()))),
          offset_(shifted(offset)) {}

    /// Precondition: balance <= largest_balance.
    [[nodiscard]] std::uint64_t operator()(std::uint64_t balance) const {
        return static_cast<std::uint64_t>((Wide{balance} * reciprocal_ + offset_) >> 64);
    }

  private:
    __extension__ using Wide = unsigned __int128;

    /// ceil(count x 2^64 / denominator), for count < denominator.
    static std::uint64_t shifted(std::uint64_t count) {
        return static_cast<std::uint64_t>(((Wide{count} << 64) + denominator - 1) / denominator);
    }

    std::uint64_t reciprocal_;
    std::uint64_t offset_;
};

} // namespace quoin
