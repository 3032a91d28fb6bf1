// The quick answer as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/payment.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const PaymentAnswer& answer);
[[nodiscard]] std::string json_text_of(const PaymentAnswer& answer);

} // namespace quoin
