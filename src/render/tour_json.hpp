// The tour's words and its JSON.
#pragma once

#include <string_view>

#include "json_parts.hpp"
#include <quoin/answers/tour.hpp>

namespace quoin {

[[nodiscard]] std::string_view name_of(TourState state);
[[nodiscard]] std::vector<std::string> cautions_of(const TourAnswer& answer);

} // namespace quoin
