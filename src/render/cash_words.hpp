// The words of an answer about cash, shared by text and JSON.
#pragma once

#include <string>
#include <vector>

#include <quoin/answers/cash.hpp>

namespace quoin {

[[nodiscard]] std::vector<std::string> cautions_of(const CashAnswer& answer);

} // namespace quoin
