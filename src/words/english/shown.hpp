// What the furnished model shows, in English.
#pragma once

#include "words/shown.hpp"

namespace quoin::english {

inline constexpr ShownWords shown = {};

} // namespace quoin::english
