// The cash that a loan takes, in English.
#pragma once

#include "words/cash.hpp"

namespace quoin::english {

inline constexpr CashWords cash = {};

} // namespace quoin::english
