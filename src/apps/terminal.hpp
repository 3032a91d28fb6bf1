// The terminal that an answer is written to.
#pragma once

#include <cstddef>
#include <optional>

namespace quoin::apps {

/// How wide a line of text may be.
inline constexpr int narrowest = 40;
inline constexpr int widest = 200;

/// Its columns, within what a line may be; nothing where standard output is no terminal.
[[nodiscard]] std::optional<std::size_t> terminal_columns();

} // namespace quoin::apps
