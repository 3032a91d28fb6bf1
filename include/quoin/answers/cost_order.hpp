// Which of two ways has cost less, from which month to which: every stretch, to the end.
//
//   cost_order({0, 5, 9}, {2, 5, 8})  -> the first in month 0, neither in month 1, then the second
#pragma once

#include <optional>
#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

enum class Cheaper { first, second, neither };
template <>
inline constexpr auto codes<Cheaper> = coded<Cheaper>({{Cheaper::first, "first"},
                                                       {Cheaper::second, "second"},
                                                       {Cheaper::neither, "neither"}});

/// Months through which one of two has cost less, or both the same.
struct CostStretch {
    Cheaper cheaper = Cheaper::neither;
    int from = 0;          ///< 0 is the closing
    std::optional<int> to; ///< nothing: it stays so

    friend bool operator==(const CostStretch&, const CostStretch&) = default;
};

/// The stretches from month `from` on, without a gap. A line is what a way has cost through month
/// 0, 1, 2 and so on; the shorter of two stays at its last amount. Precondition: neither is empty.
[[nodiscard]] std::vector<CostStretch> cost_order(const std::vector<Money>& first,
                                                  const std::vector<Money>& second, int from = 0);

} // namespace quoin
