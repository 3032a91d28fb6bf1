// Lengths as builders write them: feet and inches, 14' 6".
#pragma once

#include <string>

#include <quoin/exact/decimal.hpp>

namespace quoin {

/// To the nearest inch.
[[nodiscard]] std::string feet_and_inches(Decimal feet);

} // namespace quoin
