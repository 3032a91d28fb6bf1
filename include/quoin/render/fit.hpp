// The wishes that fit, as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/fit.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const FitAnswer& answer);
[[nodiscard]] std::string json_text_of(const FitAnswer& answer);

} // namespace quoin
