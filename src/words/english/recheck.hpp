// Each figure with its formula, and the workbook, in English.
#pragma once

#include "words/recheck.hpp"

namespace quoin::english {

inline constexpr RecheckWords recheck = {};

} // namespace quoin::english
