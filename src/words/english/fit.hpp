// Which wishes fit within a month and the cash, in English.
#pragma once

#include "words/fit.hpp"

namespace quoin::english {

inline constexpr FitWords fit = {};

} // namespace quoin::english
