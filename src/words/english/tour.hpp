// The home, area by area, in English.
#pragma once

#include "words/tour.hpp"

namespace quoin::english {

inline constexpr TourWords tour = {};

} // namespace quoin::english
