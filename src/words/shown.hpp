// What the furnished model shows.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct ShownWords {};

} // namespace quoin
