// Reading the heads of PNG (ISO/IEC 15948), JPEG (ITU-T T.81) and WebP (RFC 9649).
#include "picture_header.hpp"

namespace quoin::apps {
namespace {

using namespace std::string_view_literals;

/// Bytes of a file at an offset; those behind its end are 0.
struct Bytes {
    std::string_view all;

    [[nodiscard]] std::uint32_t at(std::size_t i) const {
        return i < all.size() ? static_cast<unsigned char>(all[i]) : 0U;
    }
    [[nodiscard]] bool has(std::size_t i, std::string_view what) const {
        return i <= all.size() && all.substr(i, what.size()) == what;
    }
    [[nodiscard]] std::uint32_t big16(std::size_t i) const { return at(i) << 8 | at(i + 1); }
    [[nodiscard]] std::uint32_t big32(std::size_t i) const { return big16(i) << 16 | big16(i + 2); }
    [[nodiscard]] std::uint32_t little16(std::size_t i) const { return at(i) | at(i + 1) << 8; }
    [[nodiscard]] std::uint32_t little24(std::size_t i) const {
        return little16(i) | at(i + 2) << 16;
    }
    [[nodiscard]] std::uint32_t little32(std::size_t i) const {
        return little16(i) | little16(i + 2) << 16;
    }
};

std::optional<Raster> sized(PictureKind kind, std::uint32_t width, std::uint32_t height) {
    if (width == 0 || height == 0) return {};
    return Raster{kind, width, height};
}

/// Its first chunk is IHDR: 13 bytes that begin with width and height.
std::optional<Raster> png(const Bytes& file) {
    if (!file.has(8, "\0\0\0\x0dIHDR"sv)) return {};
    return sized(PictureKind::png, file.big32(16), file.big32(20));
}

/// The markers of a frame, SOF0 to SOF15; DHT, JPG and DAC lie between them.
bool begins_frame(std::uint32_t marker) {
    return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
}

/// Segments follow each other up to the frame's own, which has height and width.
std::optional<Raster> jpeg(const Bytes& file) {
    std::size_t at = 2;
    while (at + 9 <= file.all.size() && file.at(at) == 0xFF) {
        const std::uint32_t marker = file.at(at + 1);
        if (marker == 0xFF) { // a byte that fills
            ++at;
            continue;
        }
        if (begins_frame(marker)) {
            return sized(PictureKind::jpeg, file.big16(at + 7), file.big16(at + 5));
        }
        const std::uint32_t length = file.big16(at + 2);
        if (length < 2 || marker < 0xC0 || (marker >= 0xD0 && marker <= 0xDA)) return {};
        at += 2 + length;
    }
    return {};
}

/// Its first chunk is the picture itself, lossy or lossless, or says what chunks follow.
std::optional<Raster> webp(const Bytes& file) {
    if (file.little32(4) < 12 || file.all.size() < 30) return {};
    if (file.has(12, "VP8 ") && file.has(23, "\x9d\x01\x2a"sv)) {
        return sized(PictureKind::webp, file.little16(26) & 0x3FFFU, file.little16(28) & 0x3FFFU);
    }
    if (file.has(12, "VP8L") && file.at(20) == 0x2F) {
        const std::uint32_t bits = file.little32(21); // 14 of width - 1, 14 of height - 1
        return sized(PictureKind::webp, (bits & 0x3FFFU) + 1, (bits >> 14 & 0x3FFFU) + 1);
    }
    if (file.has(12, "VP8X")) {
        return sized(PictureKind::webp, file.little24(24) + 1, file.little24(27) + 1);
    }
    return {};
}

} // namespace

std::optional<Raster> raster_of(std::string_view bytes) {
    const Bytes file{bytes};
    if (file.has(0, "\x89PNG\r\n\x1a\n"sv)) return png(file);
    if (file.has(0, "\xff\xd8\xff"sv)) return jpeg(file);
    if (file.has(0, "RIFF") && file.has(8, "WEBP")) return webp(file);
    return {};
}

} // namespace quoin::apps
