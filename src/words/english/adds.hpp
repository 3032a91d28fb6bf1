// What each option adds, in English.
#pragma once

#include "words/adds.hpp"

namespace quoin::english {

inline constexpr AddsWords adds = {};

} // namespace quoin::english
