// A quote as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/quote.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const QuoteAnswer& answer);
[[nodiscard]] std::string json_text_of(const QuoteAnswer& answer);

} // namespace quoin
