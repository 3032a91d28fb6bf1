// The day it is: the one place where the program asks.
#pragma once

#include <quoin/exact/date.hpp>

namespace quoin::apps {

/// In UTC.
[[nodiscard]] Date today();

} // namespace quoin::apps
