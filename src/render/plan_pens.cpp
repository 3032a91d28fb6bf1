// Writing the lines of a plan's drawing as SVG paths.
#include "plan_pens.hpp"

#include <fmt/format.h>

namespace quoin {

void PathText::move(Point place) {
    fmt::format_to(std::back_inserter(text_), "M{} {}", frame_->x(place), frame_->y(place));
    at_ = place;
}

void PathText::line(Point place) {
    const std::int64_t right = place.x - at_.x;
    const std::int64_t down = at_.y - place.y;
    const auto out = std::back_inserter(text_);
    if (down == 0) {
        fmt::format_to(out, "h{}", right);
    } else if (right == 0) {
        fmt::format_to(out, "v{}", down);
    } else {
        fmt::format_to(out, "l{} {}", right, down);
    }
    at_ = place;
}

void PathText::segment(Point from, Point to) {
    move(from);
    line(to);
}

void PathText::outline(const Outline& outline) {
    move(outline.front());
    for (std::size_t i = 1; i < outline.size(); ++i) line(outline[i]);
    close();
}

void PathText::box(const Extent& box) {
    outline({box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}});
}

void PathText::quarter(std::int64_t radius, Point to, bool clockwise) {
    fmt::format_to(std::back_inserter(text_), "a{0} {0} 0 0 {1} {2} {3}", radius, clockwise ? 1 : 0,
                   to.x - at_.x, at_.y - to.y);
    at_ = to;
}

void PathText::ellipse(Point middle, std::int64_t across, std::int64_t up) {
    move({middle.x - across, middle.y});
    fmt::format_to(std::back_inserter(text_), "a{0} {1} 0 1 0 {2} 0a{0} {1} 0 1 0 -{2} 0", across,
                   up, 2 * across);
}

void PathText::rounded(const Extent& box, std::int64_t radius) {
    const std::int64_t r = std::min({radius, width_of(box) / 2, depth_of(box) / 2});
    const Point upper_left{box.low.x, box.high.y};
    move({upper_left.x + r, upper_left.y});
    fmt::format_to(std::back_inserter(text_),
                   "h{1}a{0} {0} 0 0 1 {0} {0}v{2}a{0} {0} 0 0 1 -{0} {0}h-{1}a{0} {0} 0 0 1 -{0} "
                   "-{0}v-{2}a{0} {0} 0 0 1 {0} -{0}z",
                   r, width_of(box) - 2 * r, depth_of(box) - 2 * r);
}

Pens::Pens(const Frame& frame)
    : paths_{{{PathText(frame), PathText(frame)},
              {PathText(frame), PathText(frame)},
              {PathText(frame), PathText(frame)},
              {PathText(frame), PathText(frame)}}} {}

PathText& Pens::with(Pen pen, bool chosen) {
    return paths_.at(static_cast<std::size_t>(pen)).at(chosen ? 1 : 0);
}

std::string Pens::svg() const {
    constexpr std::array<std::string_view, 4> strokes = {
        R"(class="fine{}" stroke-width="5")", R"(class="medium{}" stroke-width="9")",
        R"(class="heavy{}" stroke-width="14")",
        R"(class="dashed{}" stroke-width="7" stroke-dasharray="26 18")"};
    std::string out;
    for (std::size_t pen = 0; pen < paths_.size(); ++pen) {
        for (std::size_t chosen = 0; chosen < 2; ++chosen) {
            const std::string& drawn = paths_[pen][chosen].text();
            if (drawn.empty()) continue;
            out += "<path " + fmt::format(fmt::runtime(strokes[pen]), chosen ? " chosen" : "") +
                   " d=\"" + drawn + "\"/>\n";
        }
    }
    return out;
}

} // namespace quoin
