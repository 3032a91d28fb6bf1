// The cash of a scenario as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/cash.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const CashAnswer& answer);
[[nodiscard]] std::string json_text_of(const CashAnswer& answer);

} // namespace quoin
