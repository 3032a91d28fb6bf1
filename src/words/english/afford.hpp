// What income, debts and cash allow, in English.
#pragma once

#include "words/afford.hpp"

namespace quoin::english {

inline constexpr AffordWords afford = {};

} // namespace quoin::english
