// Which of two has cost less, when, and how a change pays back.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct OrderWords {};

} // namespace quoin
