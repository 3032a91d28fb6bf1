// What moves until the closing, as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/shift.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const ShiftAnswer& answer);
[[nodiscard]] std::string json_text_of(const ShiftAnswer& answer);

} // namespace quoin
