// Problems as people read them: place, what was found, what was expected, what to do.
#pragma once

#include <string>

#include <quoin/text/findings.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const Findings& findings);
[[nodiscard]] std::string json_text_of(const Findings& findings);

} // namespace quoin
