// UTF-8 as it arrives: where it breaks, and how to show it all the same.
#pragma once

#include <string>
#include <string_view>

namespace quoin {

/// The first byte that no UTF-8 text holds at its place, or the end.
[[nodiscard]] std::size_t first_bad_byte(std::string_view text);

/// How many bytes stand for one bad character at the start of the text: those of a character that
/// begins well and breaks off, else one (the Unicode Standard, 3.9, substitution of maximal
/// subparts). Precondition: its first byte is such a one.
[[nodiscard]] std::size_t bad_bytes(std::string_view text);

/// The text with each such byte, and each of a character that is not plain (but tabs), replaced by
/// a question mark.
[[nodiscard]] std::string made_printable(std::string_view text);

} // namespace quoin
