// The words of what moves until the closing, shared by text and JSON.
#pragma once

#include <string>
#include <string_view>

#include <quoin/answers/shift.hpp>
#include <quoin/render/cautions.hpp>

namespace quoin {

[[nodiscard]] std::string words(const ShiftCase& moved); ///< "price +1 %"

} // namespace quoin
