// A comparison of scenarios as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/compare.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const CompareAnswer& answer);
[[nodiscard]] std::string json_text_of(const CompareAnswer& answer);

} // namespace quoin
