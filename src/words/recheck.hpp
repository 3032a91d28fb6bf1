// Each figure with its formula, and the workbook.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct RecheckWords {};

} // namespace quoin
