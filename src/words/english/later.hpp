// An option now, or after closing, in English.
#pragma once

#include "words/later.hpp"

namespace quoin::english {

inline constexpr LaterWords later = {};

} // namespace quoin::english
