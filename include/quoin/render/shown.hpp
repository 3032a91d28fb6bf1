// What the furnished model shows, as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/shown.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const ShownAnswer& answer);
[[nodiscard]] std::string json_text_of(const ShownAnswer& answer);

} // namespace quoin
