// Whether letters in a color can be read on white paper.
#pragma once

#include <string_view>

namespace quoin {

/// A contrast of 4.5 to 1 or more. Source: Web Content Accessibility Guidelines 2.2, success
/// criterion 1.4.3. Precondition: it is written as six hexadecimal digits after a "#".
[[nodiscard]] bool is_readable_on_white(std::string_view color);

} // namespace quoin
