// What a price book holds.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct ListingWords {};

} // namespace quoin
