// What can move before the closing, in English.
#pragma once

#include "words/shift.hpp"

namespace quoin::english {

inline constexpr ShiftWords shift = {};

} // namespace quoin::english
