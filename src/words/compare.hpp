// Loans side by side.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct CompareWords {};

} // namespace quoin
