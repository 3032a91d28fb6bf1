// What the first bytes of a picture file say it is, and how large it is drawn.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace quoin::apps {

enum class PictureKind { png, jpeg, webp, svg };

/// A picture made of points.
struct Raster {
    PictureKind kind = PictureKind::png;
    std::uint32_t width = 0; ///< points; neither is ever 0
    std::uint32_t height = 0;
};

/// Nothing where these are not the bytes of a PNG, JPEG or WebP picture.
[[nodiscard]] std::optional<Raster> raster_of(std::string_view bytes);

} // namespace quoin::apps
