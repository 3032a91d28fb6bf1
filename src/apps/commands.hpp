// The commands of the program, all in one table.
#pragma once

#include <vector>

#include "command.hpp"

namespace quoin::apps {

/// In the order they are listed in.
[[nodiscard]] const std::vector<Command>& commands();

} // namespace quoin::apps
