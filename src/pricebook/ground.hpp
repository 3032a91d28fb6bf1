// Ground as surveyors draw it: slanted lines, corners that were each rounded. Whole numbers all the
// same.
#pragma once

#include <quoin/exact/rounding.hpp>

#include "geometry.hpp"

namespace quoin {

/// Whether two simple outlines have more in common than a strip as narrow as the slack: neighbors
/// share a line, but not to the hundredth.
[[nodiscard]] bool overlap_by_more(const Outline& one, const Outline& other, std::int64_t slack);

/// From one end of a side to the other, down to the hundredth.
[[nodiscard]] std::int64_t length_of(const OutlineSide& side);

/// The whole part of a square root. Precondition: the square is not below zero.
[[nodiscard]] std::int64_t root_of(Int128 square);

} // namespace quoin
