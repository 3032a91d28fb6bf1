// Loans side by side, in English.
#pragma once

#include "words/compare.hpp"

namespace quoin::english {

inline constexpr CompareWords compare = {};

} // namespace quoin::english
