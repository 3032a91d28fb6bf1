// The lots and the plans, in English.
#pragma once

#include "words/site.hpp"

namespace quoin::english {

inline constexpr SiteWords site = {};

} // namespace quoin::english
