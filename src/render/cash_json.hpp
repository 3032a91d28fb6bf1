// The cautions of an answer about cash, for both of its renderings.
#pragma once

#include <string>
#include <vector>

#include <quoin/answers/cash.hpp>

namespace quoin {

[[nodiscard]] std::vector<std::string> cautions_of(const CashAnswer& answer);

} // namespace quoin
