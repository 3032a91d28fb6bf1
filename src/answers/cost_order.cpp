// Walking two lines of costs side by side.
#include <quoin/answers/cost_order.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

Money amount_at(const std::vector<Money>& line, std::size_t month) {
    return line[std::min(month, line.size() - 1)];
}

Cheaper cheaper_of(Money first, Money second) {
    if (first == second) return Cheaper::neither;
    return first < second ? Cheaper::first : Cheaper::second;
}

} // namespace

std::vector<CostStretch> cost_order(const std::vector<Money>& first,
                                    const std::vector<Money>& second, int from) {
    ensure(!first.empty() && !second.empty() && from >= 0, "lines of costs have amounts");
    const int end = static_cast<int>(std::max(first.size(), second.size()));
    std::vector<CostStretch> stretches;
    for (int month = from; month < end || stretches.empty(); ++month) {
        const auto index = static_cast<std::size_t>(month);
        const Cheaper now = cheaper_of(amount_at(first, index), amount_at(second, index));
        if (!stretches.empty() && stretches.back().cheaper == now) continue;
        if (!stretches.empty()) stretches.back().to = month - 1;
        stretches.push_back({now, month, std::nullopt});
    }
    ensure(stretches.front().from == from && !stretches.back().to,
           "an order of costs begins where it is asked from and goes on for good");
    return stretches;
}

} // namespace quoin
