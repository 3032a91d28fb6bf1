// Where the name and the size of a room stand in its drawing.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pricebook/geometry.hpp"

namespace quoin {

/// Lines about a middle, the last of them a size where one is shown.
struct Label {
    std::vector<std::string> lines;
    bool sized = false;
    bool upright = false;  ///< read from below to above
    std::int64_t font = 0; ///< of the name, in hundredths of a foot
    Point middle;

    [[nodiscard]] bool is_size(std::size_t line) const { return sized && line + 1 == lines.size(); }
    [[nodiscard]] std::int64_t font_of(std::size_t line) const {
        return is_size(line) ? font * 82 / 100 : font;
    }
    [[nodiscard]] std::int64_t height(std::size_t line) const { return font_of(line) * 118 / 100; }
};

/// Shown with its size where there is room, or in larger letters where no size is given; else
/// smaller, upright, or not at all: a label crosses neither a wall nor what it should leave free,
/// of which the first may be given up before the name is.
[[nodiscard]] std::optional<Label> label_in(const Outline& clear, const std::string& name,
                                            const std::string& size,
                                            const std::vector<Extent>& swings,
                                            const std::vector<Extent>& things);

/// How wide a text is at least likely to be, in hundredths of its font's size.
[[nodiscard]] std::int64_t text_width(std::string_view text);

} // namespace quoin
