// The programs and rates that can be used.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct ProgramsWords {};

} // namespace quoin
