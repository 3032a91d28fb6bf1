// What options add, as JSON.
#pragma once

#include "json_parts.hpp"

namespace quoin {

[[nodiscard]] Json json_of(const AddsAnswer& answer);

/// The cautions of an answer about options.
[[nodiscard]] std::vector<std::string> cautions_of(const AddsAnswer& answer);

} // namespace quoin
