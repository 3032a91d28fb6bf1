// What a price book holds, in English.
#pragma once

#include "words/listing.hpp"

namespace quoin::english {

inline constexpr ListingWords listing = {};

} // namespace quoin::english
