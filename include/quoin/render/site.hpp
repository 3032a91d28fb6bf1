// The lots and plans against the home in hand, as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/site.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const SiteAnswer& answer);
[[nodiscard]] std::string json_text_of(const SiteAnswer& answer);

} // namespace quoin
