// Marking bytes.
#include "content_mark.hpp"

#include <cstdint>

#include <fmt/format.h>

namespace quoin::apps {

std::string content_mark(std::string_view bytes) {
    std::uint64_t mark = 0xcbf29ce484222325U;
    for (const char byte : bytes) {
        mark = (mark ^ static_cast<unsigned char>(byte)) * 0x100000001b3U;
    }
    return fmt::format("{:016x}", mark);
}

} // namespace quoin::apps
