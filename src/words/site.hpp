// The lots and the plans.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct SiteWords {};

} // namespace quoin
