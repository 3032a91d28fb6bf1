// Laying out tables of text.
#include <quoin/render/table.hpp>

#include <algorithm>
#include <utility>

namespace quoin {

Table::Table(std::vector<Column> columns, std::string indent)
    : columns_(std::move(columns)), indent_(std::move(indent)) {}

void Table::row(std::vector<std::string> cells) {
    cells.resize(columns_.size());
    entries_.push_back({Kind::cells, std::move(cells)});
}
void Table::rule() { entries_.push_back({Kind::rule}); }
void Table::gap() { entries_.push_back({Kind::gap}); }

void Table::title(std::string text) {
    const std::string lead(lead_in(text), ' ');
    entries_.push_back({Kind::words, {}, {text.substr(lead.size()), lead, lead + "  "}});
}

void Table::words(const std::string& text, const std::string& first, const std::string& rest,
                  std::size_t width) {
    const std::size_t line = display_width(indent_) + display_width(rest) + width;
    const std::size_t spare = usual_width > line ? usual_width - line : 0;
    entries_.push_back({Kind::words, {}, {text, first, rest, spare}});
}

void Table::remark(const std::string& words, std::size_t width) {
    if (!words.empty()) this->words(words, "      ", "      ", width);
}

Table& Table::beside() {
    beside_ = true;
    return *this;
}

void Table::write_cells(const std::vector<std::string>& cells, const Widths& widths,
                        std::string& out) const {
    std::string line = indent_;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const std::string fill(widths[i] - std::min(widths[i], display_width(cells[i])), ' ');
        if (i > 0) line += std::string(between_columns, ' ');
        line += columns_[i].align == Align::right ? fill + cells[i] : cells[i] + fill;
    }
    line.erase(line.find_last_not_of(' ') + 1);
    out += line + "\n";
}

/// Cells of words go on below themselves.
void Table::write_wrapped(const std::vector<std::string>& cells, const Widths& widths,
                          std::string& out) const {
    std::vector<std::vector<std::string>> columns;
    std::size_t lines = 1;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const bool words = columns_[i].align == Align::left;
        columns.push_back(words ? hung(cells[i], widths[i], false) : std::vector{cells[i]});
        lines = std::max(lines, columns.back().size());
    }
    for (std::size_t line = 0; line < lines; ++line) {
        std::vector<std::string> parts;
        for (const auto& column : columns) {
            parts.push_back(line < column.size() ? column[line] : std::string());
        }
        write_cells(parts, widths, out);
    }
}

void Table::write_headings(const Widths& widths, std::string& out) const {
    std::vector<std::vector<std::string>> headings;
    std::size_t lines = 0;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        const Column& column = columns_[i];
        headings.push_back(wrapped(column.heading, std::min(column.widest_heading, widths[i])));
        lines = std::max(lines, headings.back().size());
    }
    for (std::size_t i = 0; i < lines; ++i) {
        std::vector<std::string> cells;
        for (const auto& heading : headings) { // the last lines of all headings stand together
            const std::size_t skip = lines - heading.size();
            cells.push_back(i < skip ? std::string{} : heading[i - skip]);
        }
        write_cells(cells, widths, out);
    }
}

std::string Table::written(const Widths& widths, std::size_t width) const {
    std::string out;
    const bool headed = std::any_of(columns_.begin(), columns_.end(),
                                    [](const Column& column) { return !column.heading.empty(); });
    if (headed) write_headings(widths, out);
    for (const Entry& entry : entries_) {
        if (entry.kind == Kind::gap) {
            out += "\n";
        } else if (entry.kind == Kind::words) {
            Indented said = entry.said;
            said.first.insert(0, indent_);
            said.rest.insert(0, indent_);
            out += lines_of(said, width);
        } else if (entry.kind == Kind::cells) {
            write_wrapped(entry.cells, widths, out);
        } else {
            std::vector<std::string> dashes(columns_.size());
            for (std::size_t i = 1; i < dashes.size(); ++i) dashes[i].assign(widths[i], '-');
            write_cells(dashes, widths, out);
        }
    }
    return out;
}

std::string Table::text(std::size_t width) const {
    if (const Widths widths = wanted(); whole(widths) <= width) return written(widths, width);
    if (const auto widths = narrowed(width)) return written(*widths, width);
    if (beside_ && columns_.size() > 2) return in_groups(width);
    if (columns_.size() > 2) return stacked().text(width);
    return written(least(), width);
}

} // namespace quoin
