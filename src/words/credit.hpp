// What a builder's money does.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct CreditWords {};

} // namespace quoin
