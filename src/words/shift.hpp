// What can move before the closing.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct ShiftWords {};

} // namespace quoin
