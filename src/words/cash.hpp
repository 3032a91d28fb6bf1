// The cash that a loan takes.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct CashWords {};

} // namespace quoin
