// A rechecked scenario as text and as JSON.
#pragma once

#include <string>

#include <quoin/answers/recheck.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const RecheckAnswer& answer);
[[nodiscard]] std::string json_text_of(const RecheckAnswer& answer);

/// A figure as it is shown: "$1,234.56", "6.125 %", "360".
[[nodiscard]] std::string value_text(FigureUnit unit, Decimal value);

/// What a figure rests on, in a line: "rounding 12; fha annual_fee: ltv > 95; from 2023-03-20;
/// published: HUD Mortgagee Letter 2023-05".
[[nodiscard]] std::string words(const Ground& ground);

} // namespace quoin
