// The words of what options add, shared by text and JSON.
#pragma once

#include <quoin/answers/adds.hpp>
#include <quoin/render/cautions.hpp>

namespace quoin {

[[nodiscard]] Cautions cautions_of(const AddsAnswer& answer);

} // namespace quoin
