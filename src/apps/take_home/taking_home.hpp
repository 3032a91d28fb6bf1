// The command: what a buyer takes home, written, and what is told of it.
#pragma once

#include "../command.hpp"

namespace quoin::apps {

/// Throws Refused.
[[nodiscard]] Outcome take_home_command(const Typed& typed);

} // namespace quoin::apps
