// How much of everything a file may hold: far above any home, far below what keeps a desk waiting.
//
// Work grows with what was written, and for scenarios with every option; these caps bound it. The
// schemas say the same as maxItems, maxProperties and maxLength (tests/schemas compares them).
#pragma once

#include <cstddef>

namespace quoin::caps {

// What a person writes in an inquiry.
inline constexpr std::size_t scenarios = 32;
inline constexpr std::size_t selections = 500;
inline constexpr std::size_t wishes = 200;
inline constexpr std::size_t requests = 100;
inline constexpr std::size_t incentives = 32;
inline constexpr std::size_t credits = 32;
inline constexpr std::size_t credit_uses = 12;

// What a builder or a lender writes in a price book or in lending data.
inline constexpr std::size_t options = 2000;
inline constexpr std::size_t plans = 200;
inline constexpr std::size_t list = 5000;   ///< any other list, and the rows of a list of lots
inline constexpr std::size_t columns = 200; ///< of a list of lots
inline constexpr std::size_t members = 500; ///< of any one object

// Texts, in letters (code points).
inline constexpr std::size_t name = 120;
inline constexpr std::size_t text = 2000;

// What is told.
inline constexpr std::size_t problems = 100; ///< mistakes told one by one
inline constexpr std::size_t quoted = 60;    ///< letters of a person's text in a message
inline constexpr std::size_t line = 400;     ///< letters of any part of a message

// Values of one file, each member and entry counted, and of an inquiry that is sent to the server.
inline constexpr std::size_t values = 1'000'000;
inline constexpr std::size_t sent_values = 50'000;

} // namespace quoin::caps
