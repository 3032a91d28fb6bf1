// The programs and rates that can be used, in English.
#pragma once

#include "words/programs.hpp"

namespace quoin::english {

inline constexpr ProgramsWords programs = {};

} // namespace quoin::english
