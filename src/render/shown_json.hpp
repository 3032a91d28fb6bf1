// One thing in the furnished model as JSON, shared by the questions that list it.
#pragma once

#include "json_parts.hpp"
#include <quoin/answers/shown.hpp>

namespace quoin {

[[nodiscard]] Json json_of(const ShownItem& item);

} // namespace quoin
