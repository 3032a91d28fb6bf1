// Which wishes fit within a month and the cash.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct FitWords {};

} // namespace quoin
