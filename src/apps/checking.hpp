// The report of a check: which files are sound, and everything that is wrong with the others.
#pragma once

#include <vector>

#include <quoin/words/catalogue.hpp>

#include "command.hpp"
#include "checked.hpp"

namespace quoin::apps {

/// As text, the sound files are listed and the problems follow; as JSON, one entry a file.
[[nodiscard]] Outcome report(const std::vector<Checked>& checked, const Typed& typed);

} // namespace quoin::apps
