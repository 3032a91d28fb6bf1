// Bytes in letters that a file of text may hold, and files made small.
#pragma once

#include <string>
#include <string_view>

namespace quoin::apps {

/// Two of 91 letters stand for thirteen bits or, where these are few enough, for fourteen (basE91):
/// a fifth shorter than base64. None of them is "<", "&" or "\". src/page/home/letters.mjs reads
/// them.
[[nodiscard]] std::string in_letters(std::string_view bytes);

/// In the xz format, with a sum (CRC-64) that tells what was damaged.
[[nodiscard]] std::string packed_by_xz(std::string_view bytes);

/// Both, behind the number of packed bytes and a colon.
[[nodiscard]] std::string packed_in_letters(std::string_view bytes);

} // namespace quoin::apps
