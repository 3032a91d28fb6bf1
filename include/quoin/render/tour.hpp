// The tour of a home, as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/tour.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const TourAnswer& answer);
[[nodiscard]] std::string json_text_of(const TourAnswer& answer);

} // namespace quoin
