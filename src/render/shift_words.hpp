// The words of what moves until the closing, shared by text and JSON.
#pragma once

#include <string>
#include <string_view>

#include <quoin/answers/shift.hpp>
#include <quoin/render/cautions.hpp>

namespace quoin {

/// "price +1%"
[[nodiscard]] std::string words(const ShiftCase& moved, const Catalogue& say);

} // namespace quoin
