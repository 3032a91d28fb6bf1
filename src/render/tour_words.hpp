// The tour's words, shared by text and JSON.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <quoin/answers/tour.hpp>

namespace quoin {

[[nodiscard]] std::vector<std::string> cautions_of(const TourAnswer& answer);

} // namespace quoin
