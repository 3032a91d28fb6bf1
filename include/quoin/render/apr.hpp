// An APR as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/apr.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const AprAnswer& answer);
[[nodiscard]] std::string json_text_of(const AprAnswer& answer);

} // namespace quoin
