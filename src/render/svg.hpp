// SVG in pieces: figures in feet, shapes out of corners. Presentation attributes and classes alone,
// so that it may stand in a page whose policy allows neither styles nor scripts in it.
#pragma once

#include <string>
#include <string_view>

#include <quoin/pricebook/drawing.hpp>

namespace quoin {

/// Hundredths of a foot, to a tenth: "12.5".
[[nodiscard]] std::string svg_feet(std::int64_t hundredths);

/// "12.5 -3"
[[nodiscard]] std::string svg_place(const Point& place);

/// The data of a path along the places; closed, it comes back to the first.
[[nodiscard]] std::string svg_line(const Outline& places, bool closed);

/// <path class="kind" d="data"/>; `more` are further attributes.
[[nodiscard]] std::string svg_path(std::string_view kind, std::string_view data,
                                   std::string_view more = {});

/// Text about a place, as high as `size` hundredths; `along`, if any, is the way it runs.
[[nodiscard]] std::string svg_text(std::string_view kind, const Point& middle, std::int64_t size,
                                   std::string_view text, const Point& along = {1, 0});

/// <g class="kind" more>inner</g>
[[nodiscard]] std::string svg_group(std::string_view kind, std::string_view inner,
                                    std::string_view more = {});

} // namespace quoin
