// Now or later, as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/later.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const LaterAnswer& answer);
[[nodiscard]] std::string json_text_of(const LaterAnswer& answer);

} // namespace quoin
