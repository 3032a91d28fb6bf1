// Every question that an inquiry can be asked, in every rendering.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <quoin/inquiry/inquiry.hpp>

namespace quoin::fuzz {

/// The names of the questions that are asked; the server's table has no other.
[[nodiscard]] std::vector<std::string_view> asked();

/// Asks all of them. Options are words NAME=VALUE in `options`, named as on the command line; what
/// is not said has a small value of its own. Throws Find.
void ask_all(const Desk& desk, const Inquiry& inquiry, std::string_view options);
/// Asks some of them, by name.
void ask(const Desk& desk, const Inquiry& inquiry, std::string_view options,
         const std::vector<std::string_view>& names);

} // namespace quoin::fuzz
