// The words of an answer about cash, shared by text and JSON.
#pragma once

#include <quoin/answers/cash.hpp>
#include <quoin/render/cautions.hpp>

namespace quoin {

[[nodiscard]] Cautions cautions_of(const CashAnswer& answer);

} // namespace quoin
