// Text as it reads: wrapped words side by side again, so that a sentence can be looked for.
#pragma once

#include <string>

namespace quoin::test {

/// Line ends and indents as single spaces.
inline std::string unwrapped(const std::string& text) {
    std::string out;
    for (const char c : text) {
        const char plain = c == '\n' ? ' ' : c;
        if (plain != ' ' || out.empty() || out.back() != ' ') out += plain;
    }
    return out;
}

} // namespace quoin::test
