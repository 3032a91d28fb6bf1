// Plain text: what may stand in a name, and how to show a text that is none.
//
// Control characters steer a terminal, and marks of the direction of writing make a line read in
// another order than it was written in (Unicode Technical Report 36, 3.1 and 3.6). Neither has a
// use in the name of a plan or a buyer; letters of every language do.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace quoin {

/// Whether a UTF-8 text has no control character, no line or paragraph separator, and no mark that
/// turns the direction of writing.
[[nodiscard]] bool is_plain(std::string_view text);

/// The text with every such character spelled out, as in \u001B; `kept` stay as they are.
[[nodiscard]] std::string made_visible(std::string_view text, std::string_view kept = {});

/// The letter that begins at this byte, with what belongs to it: one to four bytes. A byte that no
/// letter has there stands for itself.
[[nodiscard]] std::string_view letter_at(std::string_view text, std::size_t at);
/// The code point of one letter.
[[nodiscard]] char32_t code_point(std::string_view letter);

/// Letters of a UTF-8 text, each code point one.
[[nodiscard]] std::size_t letters_in(std::string_view text);

/// At most so many letters of it; where it was longer, the last of them is "…".
[[nodiscard]] std::string cut(std::string_view text, std::size_t most);

} // namespace quoin
