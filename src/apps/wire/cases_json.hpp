// The cases and the questions as /api/cases tells them.
#pragma once

#include <string>
#include <vector>

#include <quoin/questions/questions.hpp>

#include "cases.hpp"

namespace quoin::apps {

[[nodiscard]] EachLanguage<std::string> json_of(const Cases& cases,
                                                const std::vector<const Question*>& asked);

} // namespace quoin::apps
