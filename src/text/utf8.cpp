// Checking UTF-8 byte by byte.
#include "utf8.hpp"

#include <quoin/text/plain.hpp>

namespace quoin {
namespace {

/// What may follow a lead byte (RFC 3629): how many bytes, and the range of the first. The range
/// keeps out overlong forms, surrogates and what lies above U+10FFFF.
struct Tail {
    std::size_t bytes;
    unsigned char lowest = 0x80;
    unsigned char highest = 0xBF;
};
constexpr std::size_t no_lead = 4;

Tail tail_of(unsigned char lead) {
    if (lead < 0x80) return {0};
    if (lead < 0xC2 || lead > 0xF4) return {no_lead};
    if (lead < 0xE0) return {1};
    if (lead == 0xE0) return {2, 0xA0, 0xBF};
    if (lead == 0xED) return {2, 0x80, 0x9F};
    if (lead < 0xF0) return {2};
    if (lead == 0xF0) return {3, 0x90, 0xBF};
    return lead == 0xF4 ? Tail{3, 0x80, 0x8F} : Tail{3};
}

/// How many of the bytes after the lead are such as follow it.
std::size_t good_tail(std::string_view rest, const Tail& tail) {
    if (tail.bytes == no_lead) return 0;
    std::size_t good = 0;
    while (good < tail.bytes && good + 1 < rest.size()) {
        const auto byte = static_cast<unsigned char>(rest[good + 1]);
        const bool first = good == 0;
        if (byte < (first ? tail.lowest : 0x80) || byte > (first ? tail.highest : 0xBF)) break;
        ++good;
    }
    return good;
}

bool follows(std::string_view rest, const Tail& tail) {
    return good_tail(rest, tail) == tail.bytes;
}

} // namespace

std::size_t first_bad_byte(std::string_view text) {
    std::size_t i = 0;
    while (i < text.size()) {
        if (static_cast<unsigned char>(text[i]) < 0x80) { // one byte, whole in itself
            ++i;
            continue;
        }
        const Tail tail = tail_of(static_cast<unsigned char>(text[i]));
        if (!follows(text.substr(i), tail)) return i;
        i += 1 + tail.bytes;
    }
    return text.size();
}

std::size_t bad_bytes(std::string_view text) {
    return 1 + good_tail(text, tail_of(static_cast<unsigned char>(text.front())));
}

std::string made_printable(std::string_view text) {
    std::string shown;
    while (!text.empty()) {
        const std::size_t good = first_bad_byte(text);
        for (std::size_t i = 0; i < good;) {
            const std::size_t bytes = 1 + tail_of(static_cast<unsigned char>(text[i])).bytes;
            const std::string_view letter = text.substr(i, bytes);
            shown +=
                letter == "\t" || is_plain(letter) ? std::string(letter) : std::string(bytes, '?');
            i += bytes;
        }
        if (good == text.size()) break;
        shown += '?';
        text.remove_prefix(good + 1);
    }
    return shown;
}

} // namespace quoin
