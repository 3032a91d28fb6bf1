// A row of a band table in words: "LTV over 90 up to 95%", where the file says "ltv > 90, <= 95".
#pragma once

#include <string>
#include <string_view>

#include "words/jumps.hpp"

namespace quoin {

/// The bands of a row, as written in its table, but for those that `other` has just so.
[[nodiscard]] std::string band_words(std::string_view written, std::string_view other,
                                     const JumpWords& say);

} // namespace quoin
