// What options add, as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/adds.hpp>

namespace quoin {

/// `by_part`: the month's difference by part under each item, instead of one line an item.
[[nodiscard]] std::string text_of(const AddsAnswer& answer, bool by_part);
[[nodiscard]] std::string json_text_of(const AddsAnswer& answer);

} // namespace quoin
