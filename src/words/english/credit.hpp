// What a builder's money does, in English.
#pragma once

#include "words/credit.hpp"

namespace quoin::english {

inline constexpr CreditWords credit = {};

} // namespace quoin::english
