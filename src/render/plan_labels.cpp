// Finding room for labels.
#include "plan_labels.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include "pricebook/walls.hpp"
#include <quoin/text/plain.hpp>

namespace quoin {
namespace {

constexpr std::int64_t margin = 24; ///< between a label and a line, hundredths of a foot

bool apart(const Extent& a, const Extent& b) {
    return a.high.x <= b.low.x || b.high.x <= a.low.x || a.high.y <= b.low.y || b.high.y <= a.low.y;
}

/// Whether a side runs through the inside of a box.
bool runs_through(const OutlineSide& side, const Extent& box) {
    const auto [left, right] = std::minmax(side.from.x, side.to.x);
    const auto [low, high] = std::minmax(side.from.y, side.to.y);
    if (apart({{left, low}, {right, high}}, box)) return false;
    const auto turn = [&](Point place) {
        const std::int64_t cross = (side.to.x - side.from.x) * (place.y - side.from.y) -
                                   (side.to.y - side.from.y) * (place.x - side.from.x);
        return cross > 0 ? 1 : cross < 0 ? -1 : 0;
    };
    const int turns = turn(box.low) + turn(box.high) + turn({box.low.x, box.high.y}) +
                      turn({box.high.x, box.low.y});
    return std::abs(turns) < 3;
}

bool is_free(const Extent& box, const Outline& clear, const std::vector<Extent>& taken) {
    const Point middle{(box.low.x + box.high.x) / 2, (box.low.y + box.high.y) / 2};
    if (lies(middle, clear) != Lies::inside) return false;
    for (const OutlineSide& side : sides_of(clear)) {
        if (runs_through(side, box)) return false;
    }
    return std::all_of(taken.begin(), taken.end(),
                       [&](const Extent& one) { return apart(one, box); });
}

/// A place for a box of this size, as near to the middle of the room as can be.
std::optional<Point> place_for(std::int64_t width, std::int64_t depth, const Outline& clear,
                               const std::vector<Extent>& taken) {
    const Extent room = extent_of(clear);
    const std::int64_t free_x = width_of(room) - width;
    const std::int64_t free_y = depth_of(room) - depth;
    if (free_x < 0 || free_y < 0) return std::nullopt;
    const Point center{(room.low.x + room.high.x) / 2, (room.low.y + room.high.y) / 2};
    constexpr std::int64_t steps = 16; // to either side
    std::optional<Point> best;
    std::int64_t nearest = 0;
    for (std::int64_t i = -steps; i <= steps; ++i) {
        for (std::int64_t j = -steps; j <= steps; ++j) {
            const Point middle{center.x + free_x * i / (2 * steps),
                               center.y + free_y * j / (2 * steps)};
            const Point off{middle.x - center.x, middle.y - center.y};
            const std::int64_t distance = off.x * off.x + off.y * off.y;
            if (best && distance >= nearest) continue;
            const Extent box{{middle.x - width / 2, middle.y - depth / 2},
                             {middle.x + width / 2, middle.y + depth / 2}};
            if (!is_free(box, clear, taken)) continue;
            best = middle;
            nearest = distance;
        }
    }
    return best;
}

/// A name on one line, on two and on three, where its words allow it.
std::vector<std::vector<std::string>> wrappings(const std::string& name) {
    std::vector<std::string> words;
    for (std::size_t begin = 0; begin <= name.size();) {
        const std::size_t end = std::min(name.find(' ', begin), name.size());
        if (end > begin) words.push_back(name.substr(begin, end - begin));
        begin = end + 1;
    }
    std::vector<std::vector<std::string>> all = {{name}};
    for (std::size_t count = 2; count <= std::min<std::size_t>(words.size(), 3); ++count) {
        // The narrowest way to break it into so many lines: the least width that does it.
        std::vector<std::string> lines;
        for (std::int64_t width = 100; lines.empty() || lines.size() > count; width += 20) {
            lines.clear();
            for (const std::string& word : words) {
                const std::string longer = lines.empty() ? word : lines.back() + " " + word;
                if (lines.empty() || text_width(longer) > width) {
                    lines.push_back(word);
                } else {
                    lines.back() = longer;
                }
            }
        }
        all.push_back(std::move(lines));
    }
    return all;
}

Extent box_of(const Label& label) {
    std::int64_t width = 0;
    std::int64_t depth = 0;
    for (std::size_t i = 0; i < label.lines.size(); ++i) {
        width = std::max(width, text_width(label.lines[i]) * label.font_of(i) / 100);
        depth += label.height(i);
    }
    const std::int64_t x = width + 2 * margin;
    const std::int64_t y = depth + margin;
    return {{0, 0}, label.upright ? Point{y, x} : Point{x, y}};
}

/// What is tried, from the best to the least.
std::vector<Label> candidates(const std::string& name, const std::string& size) {
    const auto names = wrappings(name);
    std::vector<Label> all;
    if (size.empty()) {
        for (const std::int64_t font : {190, 175, 160, 145, 130, 115}) {
            for (const auto& lines : names) all.push_back({lines, false, false, font, {}});
            all.push_back({{name}, false, true, font, {}});
        }
        return all;
    }
    for (const std::int64_t font : {130, 118, 106, 96}) {
        for (std::vector<std::string> lines : names) {
            lines.push_back(size);
            all.push_back({std::move(lines), true, false, font, {}});
        }
    }
    for (const std::int64_t font : {100, 92, 84, 76, 70}) {
        for (const auto& lines : names) all.push_back({lines, false, false, font, {}});
        all.push_back({{name}, false, true, font, {}});
    }
    return all;
}

} // namespace

std::int64_t text_width(std::string_view text) {
    std::int64_t width = 0;
    for (std::size_t i = 0; i < text.size();) {
        const std::string_view letter = letter_at(text, i);
        i += letter.size();
        const auto is_one_of = [&](std::string_view letters) {
            return letters.find(letter) != std::string_view::npos;
        };
        width += is_one_of("ijl.,'|")             ? 27
                 : is_one_of("frt -/()\"")        ? 42
                 : is_one_of("mwMW")              ? 88
                 : letter >= "A" && letter <= "Z" ? 70
                                                  : 61;
    }
    return width;
}

std::optional<Label> label_in(const Outline& clear, const std::string& name,
                              const std::string& size, const std::vector<Extent>& swings,
                              const std::vector<Extent>& things) {
    std::vector<Extent> both = things;
    both.insert(both.end(), swings.begin(), swings.end());
    for (const std::vector<Extent>* taken :
         std::array<const std::vector<Extent>*, 2>{&both, &things}) {
        for (Label label : candidates(name, size)) {
            const Extent box = box_of(label);
            const auto middle = place_for(width_of(box), depth_of(box), clear, *taken);
            if (!middle) continue;
            label.middle = *middle;
            return label;
        }
    }
    return std::nullopt;
}

} // namespace quoin
