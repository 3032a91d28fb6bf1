// What the buyer takes home, in English.
#pragma once

#include "words/sheet.hpp"

namespace quoin::english {

inline constexpr SheetWords sheet = {};

} // namespace quoin::english
