// What can be afforded, as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/afford.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const AffordAnswer& answer);
[[nodiscard]] std::string json_text_of(const AffordAnswer& answer);

} // namespace quoin
