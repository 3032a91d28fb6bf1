// Where nothing fits: the home that holds the must-haves and is over the limits by the least, and,
// where the must-haves cannot stand together at all, which of them and by which rules.
#pragma once

#include <string>

#include "search.hpp"

namespace quoin {

struct FitNearest {
    bool stands = false;         ///< some home holds the must-haves by the rules
    bool available = false;      ///< the loan can be had for one
    std::vector<int> taken;      ///< items of the nearest home
    std::optional<FitMiss> miss; ///< where the loan can be had
    bool proven = false;
};

/// Of every choice that holds the must-haves. The place's own limits are those that are missed.
[[nodiscard]] FitNearest nearest_to_limits(const FitPlace& place, const FitSearchWatch& watch);

/// The fewest must-haves that contradict each other, with the rules between them; more than the
/// fewest where the watch stops it.
/// Precondition: by the rules no home holds them all.
[[nodiscard]] FitBarred contradiction(const FitPlace& place, const FitSearchWatch& watch);

} // namespace quoin
