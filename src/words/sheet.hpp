// What the buyer takes home.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct SheetWords {};

} // namespace quoin
