// The sheet that a map of lots is drawn on: what of the map is in sight, and where names have room.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include <quoin/pricebook/site_map.hpp>

namespace quoin {

/// Where a name stands and the way it runs.
struct NamePlace {
    Point middle;
    Point along;
};

class MapSheet {
  public:
    /// The lots with a margin around.
    explicit MapSheet(const SiteMap& map);
    /// One of the map's lots, likewise.
    explicit MapSheet(const LotOutline& lot);

    [[nodiscard]] std::int64_t width() const { return right_ - left_; }
    [[nodiscard]] std::int64_t height() const { return top_ - bottom_; }
    /// From the left and from the top, as SVG has it.
    [[nodiscard]] Point laid(const Point& place) const { return {place.x - left_, top_ - place.y}; }
    [[nodiscard]] Outline laid(const Outline& places) const;

    /// Along the longest straight part of a laid line that is in sight; nothing where a name of
    /// this length has no room.
    [[nodiscard]] std::optional<NamePlace> along(const Outline& line, std::int64_t length) const;
    /// Within a laid outline, level or else upright, where there is most room about a name of this
    /// length and height.
    [[nodiscard]] std::optional<NamePlace> within(const Outline& outline, std::int64_t length,
                                                  std::int64_t height) const;

  private:
    explicit MapSheet(std::span<const LotOutline> lots);

    std::int64_t left_ = 0;
    std::int64_t right_ = 0;
    std::int64_t top_ = 0;
    std::int64_t bottom_ = 0;
};

} // namespace quoin
