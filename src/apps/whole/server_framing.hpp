// Framing: how much of what a connection has sent so far is its next request.
//
// The library's parser reads a request from a stream and waits where it is not whole. Here it is
// told apart beforehand, by the two things that decide it: the empty line, and Content-Length.
// What the parser makes of those bytes may still be a refusal; never does it see others.
#pragma once

#include <cstddef>
#include <string_view>

namespace quoin::apps {

/// What the lines before a body may take, in bytes: a browser sends less than a thousand.
inline constexpr std::size_t largest_head = 32U * 1024;

struct Framing {
    enum class State { in_head, in_body, whole };

    State state = State::in_head;
    std::size_t head = 0; ///< bytes up to the body; 0 while in it
    std::size_t size = 0; ///< bytes of the request; where it is not whole, of what it will be
};

/// `looked` is how far earlier looks at the same bytes came; 0 at first.
///
/// Without a single, clear length that is within the limit, a request ends with its head: it is
/// refused for that, or has no body. A head above its limit is taken as it is, and refused.
[[nodiscard]] Framing framing_of(std::string_view sent, std::size_t& looked);

} // namespace quoin::apps
