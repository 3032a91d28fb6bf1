// Laying out what is told.
#include <quoin/render/blocks.hpp>

#include <algorithm>
#include <iterator>
#include <utility>

namespace quoin {
namespace {

constexpr std::size_t beside_paragraph = 2; ///< that a paragraph leaves free

std::string laid_out(const std::string& lines, std::size_t width) {
    std::string out;
    for (std::size_t from = 0; from < lines.size();) {
        const std::size_t end = std::min(lines.find('\n', from), lines.size());
        for (const std::string& line : hung(lines.substr(from, end - from), width, true)) {
            out += line + "\n";
        }
        from = end + 1;
    }
    return out;
}
std::string laid_out(const Indented& said, std::size_t width) { return lines_of(said, width); }
std::string laid_out(const Table& table, std::size_t width) { return table.text(width); }

/// Broken after a mark where that is possible.
std::string laid_out(const OneLine& line_of, std::size_t width) {
    constexpr std::string_view mark = " \xC2\xB7";
    std::string out;
    std::string line;
    for (std::size_t i = 0; i < line_of.parts.size(); ++i) {
        const bool last = i + 1 == line_of.parts.size();
        const std::string part = line_of.parts[i] + (last ? "" : std::string(mark));
        if (!line.empty() && display_width(line) + 1 + display_width(part) > width) {
            out += laid_out(std::exchange(line, "  "), width);
        } else if (!line.empty()) {
            line += " ";
        }
        line += part;
    }
    return out + laid_out(line, width);
}

} // namespace

Blocks::Blocks(std::string lines) {
    if (!lines.empty()) blocks_.emplace_back(std::move(lines));
}
Blocks::Blocks(Indented paragraph) { blocks_.emplace_back(std::move(paragraph)); }
Blocks::Blocks(Table table) { blocks_.emplace_back(std::move(table)); }
Blocks::Blocks(OneLine line) { blocks_.emplace_back(std::move(line)); }

Blocks& Blocks::operator+=(Blocks more) {
    auto from = more.blocks_.begin();
    if (!blocks_.empty() && from != more.blocks_.end()) { // a line may come in pieces
        auto* lines = std::get_if<std::string>(&blocks_.back());
        const auto* on = std::get_if<std::string>(&*from);
        if (lines != nullptr && on != nullptr) {
            *lines += *on;
            ++from;
        }
    }
    blocks_.insert(blocks_.end(), std::make_move_iterator(from),
                   std::make_move_iterator(more.blocks_.end()));
    return *this;
}

std::string Blocks::text(std::size_t width) const {
    std::string out;
    for (const auto& block : blocks_) {
        out += std::visit([&](const auto& each) { return laid_out(each, width); }, block);
    }
    return out;
}

Blocks titled(const std::string& title) { return "\n" + title + "\n"; }

Blocks paragraph(const std::string& text, const std::string& first, const std::string& indent) {
    return Indented{text, first, indent, beside_paragraph};
}

Blocks paragraph(const std::string& text, const std::string& indent) {
    return paragraph(text, indent, indent);
}

} // namespace quoin
