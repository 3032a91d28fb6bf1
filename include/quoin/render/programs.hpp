// The loan programs and rates that an inquiry can use, as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/programs.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const ProgramsAnswer& answer);
[[nodiscard]] std::string json_text_of(const ProgramsAnswer& answer);

} // namespace quoin
