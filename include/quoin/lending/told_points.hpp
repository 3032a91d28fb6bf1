// The unit of an adjustment that is told of some loans only, as in the part of a rate sheet that a
// buyer takes home: where it has no row, no rate is known, while a table of "points" adds nothing.
#pragma once

#include <string_view>

namespace quoin {

/// What `BandTable::unit` then is.
inline constexpr std::string_view points_or_no_rate = "points or no rate";

} // namespace quoin
