// A name for bytes by what they are.
#pragma once

#include <string>
#include <string_view>

namespace quoin::apps {

/// FNV-1a of 64 bits, in 16 hexadecimal digits: the same bytes have the same, others another one.
/// No proof against somebody who looks for two that meet.
[[nodiscard]] std::string content_mark(std::string_view bytes);

} // namespace quoin::apps
