// An option now, or after closing.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct LaterWords {};

} // namespace quoin
