// "What do we take home?" One home and its ways to pay on paper: the quote, the floor plan, and the
// cash of each way by day and by cost where only one is asked for.
//
// Nothing of income, debts, credit score or cash is in it.
#pragma once

#include <optional>

#include <quoin/answers/cash.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/rooms.hpp>

namespace quoin {

struct SheetAnswer {
    QuoteAnswer quote;
    RoomsAnswer rooms;
    std::optional<CashAnswer> cash; ///< where the sheet is about one scenario
};

/// About every scenario, or about one of them alone.
[[nodiscard]] SheetAnswer sheet(const Sitting& sitting, std::optional<std::size_t> scenario = {});

} // namespace quoin
