// What income, debts and cash allow.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct AffordWords {};

} // namespace quoin
