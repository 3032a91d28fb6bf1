// Writing bytes as letters, and packing by liblzma.
#include "letters.hpp"

#include <cstdint>

#include <lzma.h>

#include <quoin/exact/broken.hpp>

namespace quoin::apps {
namespace {

constexpr std::uint32_t base = 91;
constexpr std::uint32_t few = 88; ///< thirteen bits up to here have room for one bit more

/// Those that can be typed, without three.
std::string the_letters() {
    std::string letters;
    for (char letter = '!'; letter <= '~'; ++letter) {
        if (letter != '<' && letter != '&' && letter != '\\') letters += letter;
    }
    ensure_equal(letters.size(), std::size_t{base}, "there are as many letters as the base says");
    return letters;
}

constexpr std::uint32_t low_bits(std::uint32_t bits, int count) {
    return bits & ((std::uint32_t{1} << count) - 1);
}

} // namespace

std::string in_letters(std::string_view bytes) {
    static const std::string letters = the_letters();
    std::string text;
    text.reserve(bytes.size() * 5 / 4 + 2);
    std::uint32_t bits = 0;
    int count = 0;
    const auto put = [&](std::uint32_t value) {
        text += letters[value % base];
        text += letters[value / base];
    };
    for (const char byte : bytes) {
        bits |= static_cast<std::uint32_t>(static_cast<unsigned char>(byte)) << count;
        count += 8;
        if (count <= 13) continue;
        const int size = low_bits(bits, 13) > few ? 13 : 14;
        put(low_bits(bits, size));
        bits >>= size;
        count -= size;
    }
    if (count > 0) put(bits);
    return text;
}

std::string packed_by_xz(std::string_view bytes) {
    std::string packed(lzma_stream_buffer_bound(bytes.size()), '\0');
    std::size_t size = 0;
    const lzma_ret done = lzma_easy_buffer_encode(
        LZMA_PRESET_DEFAULT | LZMA_PRESET_EXTREME, LZMA_CHECK_CRC64, nullptr,
        reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size(),
        reinterpret_cast<std::uint8_t*>(packed.data()), &size, packed.size());
    ensure(done == LZMA_OK, "bytes fit into their bound");
    packed.resize(size);
    return packed;
}

std::string packed_in_letters(std::string_view bytes) {
    const std::string packed = packed_by_xz(bytes);
    return std::to_string(packed.size()) + ":" + in_letters(packed);
}

} // namespace quoin::apps
