// The words of what moves until the closing, shared by text and JSON.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <quoin/answers/shift.hpp>

namespace quoin {

[[nodiscard]] std::string words(const ShiftCase& moved); ///< "price +1 %"
[[nodiscard]] std::vector<std::string> cautions_of(const ShiftAnswer& answer);

} // namespace quoin
