// What a builder's money can do, as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/credit.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const CreditAnswer& answer);
[[nodiscard]] std::string json_text_of(const CreditAnswer& answer);

} // namespace quoin
