// The words of what options add, shared by text and JSON.
#pragma once

#include <string>
#include <vector>

#include <quoin/answers/adds.hpp>

namespace quoin {

[[nodiscard]] std::vector<std::string> cautions_of(const AddsAnswer& answer);

} // namespace quoin
