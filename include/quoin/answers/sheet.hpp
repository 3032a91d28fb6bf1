// "What do we take home?" One home and its loans on two sides of paper: the quote, the floor plan,
// the lot, and the cash of one loan by day.
//
// Nothing of income, debts, credit score or cash is in it.
#pragma once

#include <optional>
#include <string>

#include <quoin/answers/cash.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/rooms.hpp>
#include <quoin/answers/site.hpp>

namespace quoin {

struct SheetAnswer {
    QuoteAnswer quote;
    RoomsAnswer rooms;
    SiteAnswer site;
    std::string color;                ///< of the builder; empty: none
    std::optional<std::size_t> front; ///< the loan that is told large; nothing where there is none
    std::optional<CashAnswer> cash;   ///< of that loan, where it can be had
};

/// With this loan in front, or else with the first that can be had.
[[nodiscard]] SheetAnswer sheet(const Sitting& sitting, std::optional<std::size_t> scenario = {});

} // namespace quoin
