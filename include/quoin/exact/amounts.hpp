// Amounts: an amount of money for each of an enumeration, begun with nothing.
//
//   Amounts<CreditUse, 6> room;
//   room[CreditUse::points] += fee;
//   room.total()
#pragma once

#include <array>
#include <cstddef>

#include <quoin/exact/money.hpp>

namespace quoin {

template <class Enum, std::size_t size>
class Amounts {
  public:
    [[nodiscard]] constexpr Money operator[](Enum of) const {
        return amounts_[static_cast<std::size_t>(of)];
    }
    constexpr Money& operator[](Enum of) { return amounts_[static_cast<std::size_t>(of)]; }
    [[nodiscard]] constexpr Money total() const {
        Money sum;
        for (const Money amount : amounts_) sum += amount;
        return sum;
    }
    friend constexpr bool operator==(const Amounts&, const Amounts&) = default;

  private:
    std::array<Money, size> amounts_{};
};

} // namespace quoin
