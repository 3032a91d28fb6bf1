// Parsing: from the words of a command line to what was typed for a command, by the table.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "command.hpp"
#include "command_line.hpp"

namespace quoin::apps {

/// Fills `typed`; what it has of --json and --rates is filled even where the rest is wrong. A
/// result where there is no more to do: help, version, wrong use.
[[nodiscard]] std::optional<Result> parse(const std::vector<std::string>& arguments, Typed& typed);

/// What is said of wrong use, with where to find help.
[[nodiscard]] Result wrong_use(const std::vector<std::string>& arguments, const std::string& what);

} // namespace quoin::apps
