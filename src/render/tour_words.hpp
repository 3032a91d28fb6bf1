// The tour's words, shared by text and JSON.
#pragma once

#include <string_view>

#include <quoin/answers/tour.hpp>
#include <quoin/render/cautions.hpp>

namespace quoin {

[[nodiscard]] Cautions cautions_of(const TourAnswer& answer);

} // namespace quoin
