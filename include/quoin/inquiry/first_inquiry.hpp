// An inquiry to begin a new buyer with: a bare home of a price book and a loan by each program of
// the day's rate sheet.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>

#include <quoin/inquiry/desk.hpp>

namespace quoin {

/// What is assumed for a buyer of whom nothing is known yet.
struct FirstAssumed {
    enum class Prices : std::uint8_t { current, ended, coming };

    Prices prices = Prices::current; ///< today, against the day that the inquiry is as of
    Date as_of;
    int score = 0;
    int days_to_closing = 0;
};
/// Says it to the buyer.
using FirstComment = std::function<std::string(const FirstAssumed&)>;

/// Its JSON, sound against the desk: the first plan with its first elevation on the first free lot
/// that it fits, nothing chosen, and each program of a fixed rate at its usual least down payment.
/// What is assumed is said in its comment, by `comment`. Nothing where no such home can be had, or
/// no rates were in force within the price book's days. `book` is what the inquiry calls its price
/// book; `today` decides the day it is as of.
[[nodiscard]] std::optional<std::string> first_inquiry(const std::string& book, const Desk& desk,
                                                       Date today, const FirstComment& comment);

} // namespace quoin
