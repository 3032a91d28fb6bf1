// Pens: the lines of a plan's drawing, gathered by how they are drawn.
//
// A place on a floor becomes one on the sheet: to the right of its left edge and down from its
// upper edge, since the back of the home is up.
#pragma once

#include <array>
#include <cstdint>
#include <string>

#include "pricebook/walls.hpp"

namespace quoin {

/// What of the ground a drawing shows, in hundredths of a foot.
struct Frame {
    Extent extent;

    [[nodiscard]] std::int64_t x(Point place) const { return place.x - extent.low.x; }
    [[nodiscard]] std::int64_t y(Point place) const { return extent.high.y - place.y; }
};

/// The commands of an SVG path.
class PathText {
  public:
    explicit PathText(const Frame& frame) : frame_(&frame) {}

    void move(Point place);
    void line(Point place);
    void close() { text_ += 'z'; }
    void segment(Point from, Point to);
    void outline(const Outline& outline);
    void box(const Extent& box);
    /// A quarter of a circle, from where the path is.
    void quarter(std::int64_t radius, Point to, bool clockwise);
    void ellipse(Point middle, std::int64_t across, std::int64_t up);
    void rounded(const Extent& box, std::int64_t radius);

    [[nodiscard]] const std::string& text() const { return text_; }

  private:
    const Frame* frame_;
    Point at_;
    std::string text_;
};

enum class Pen { fine, medium, heavy, dashed };

/// What has been drawn with each pen, and what of it chosen options bring.
class Pens {
  public:
    explicit Pens(const Frame& frame);

    [[nodiscard]] PathText& with(Pen pen, bool chosen);
    /// A path for each pen that was used.
    [[nodiscard]] std::string svg() const;

  private:
    std::array<std::array<PathText, 2>, 4> paths_;
};

} // namespace quoin
