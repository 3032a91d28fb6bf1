// Outlines: whether they are sound, which way they run, what lies in them. Exact, in whole numbers.
#pragma once

#include <quoin/exact/rounding.hpp>
#include <quoin/pricebook/drawing.hpp>

namespace quoin {

/// Above zero where the way from a over b to c turns left, below where it turns right.
[[nodiscard]] Int128 turn(const Point& a, const Point& b, const Point& c);

/// Whether it encloses something and neither crosses nor touches itself.
[[nodiscard]] bool is_simple(const Outline& outline);

[[nodiscard]] bool runs_clockwise(const Outline& outline);

/// Whether a point lies in an outline; on its line is not in it.
[[nodiscard]] bool lies_in(const Outline& outline, const Point& point);

/// Whether two simple outlines overlap by more than the slack: corners of one side of a line that
/// were each rounded do not meet to the hundredth.
[[nodiscard]] bool overlap(const Outline& one, const Outline& other, std::int64_t slack);

/// The whole part of a square root. Precondition: the square is not below zero.
[[nodiscard]] std::int64_t root_of(Int128 square);

} // namespace quoin
