// Laying out tables and paragraphs of text.
#include <quoin/render/table.hpp>

#include <algorithm>
#include <utility>

#include <quoin/text/plain.hpp>

namespace quoin {

std::size_t display_width(const std::string& text) { return letters_in(text); }

namespace {

std::size_t word_end(const std::string& text, std::size_t from) {
    return std::min(text.find(' ', from), text.size());
}

} // namespace

std::vector<std::string> wrapped(const std::string& text, std::size_t width) {
    std::vector<std::string> lines;
    std::string line;
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t end = word_end(text, i);
        const std::string word = text.substr(i, end - i);
        const bool fits = line.empty() || display_width(line) + 1 + display_width(word) <= width;
        if (!fits) lines.push_back(std::exchange(line, {}));
        line += (line.empty() ? "" : " ") + word;
        i = end + 1;
    }
    if (!line.empty() || lines.empty()) lines.push_back(line);
    return lines;
}

std::string titled(const std::string& title) { return "\n" + title + "\n"; }

std::string paragraph(const std::string& text, const std::string& first, const std::string& indent,
                      std::size_t width) {
    std::string out;
    for (const std::string& line : wrapped(text, width - display_width(indent))) {
        out += (out.empty() ? first : indent) + line + "\n";
    }
    return out;
}

std::string paragraph(const std::string& text, const std::string& indent) {
    return paragraph(text, indent, indent);
}

Table::Table(std::vector<Column> columns, std::string indent)
    : columns_(std::move(columns)), indent_(std::move(indent)) {}

void Table::row(std::vector<std::string> cells) {
    cells.resize(columns_.size());
    entries_.push_back({Kind::cells, std::move(cells)});
}
void Table::rule() { entries_.push_back({Kind::rule, {}}); }
void Table::gap() { entries_.push_back({Kind::gap, {}}); }
void Table::title(std::string text) { entries_.push_back({Kind::title, {std::move(text)}}); }

void Table::remark(const std::string& words, std::size_t width) {
    if (words.empty()) return;
    for (const std::string& line : wrapped(words, width)) title("      " + line);
}

std::vector<std::size_t> Table::widths() const {
    std::vector<std::size_t> widths;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        std::size_t width = columns_[i].least;
        for (const std::string& line : wrapped(columns_[i].heading, columns_[i].widest_heading)) {
            width = std::max(width, display_width(line));
        }
        for (const Entry& entry : entries_) {
            if (entry.kind == Kind::cells) width = std::max(width, display_width(entry.cells[i]));
        }
        widths.push_back(width);
    }
    return widths;
}

void Table::write_cells(const std::vector<std::string>& cells,
                        const std::vector<std::size_t>& widths, std::string& out) const {
    std::string line = indent_;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const std::string fill(widths[i] - display_width(cells[i]), ' ');
        if (i > 0) line += "  ";
        line += columns_[i].align == Align::right ? fill + cells[i] : cells[i] + fill;
    }
    line.erase(line.find_last_not_of(' ') + 1);
    out += line + "\n";
}

void Table::write_headings(const std::vector<std::size_t>& widths, std::string& out) const {
    std::vector<std::vector<std::string>> headings;
    std::size_t lines = 0;
    for (const Column& column : columns_) {
        headings.push_back(wrapped(column.heading, column.widest_heading));
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

std::string Table::text() const {
    const auto columns = widths();
    std::string out;
    const bool headed = std::any_of(columns_.begin(), columns_.end(),
                                    [](const Column& column) { return !column.heading.empty(); });
    if (headed) write_headings(columns, out);
    for (const Entry& entry : entries_) {
        if (entry.kind == Kind::gap) {
            out += "\n";
        } else if (entry.kind == Kind::title) {
            out += indent_ + entry.cells.front() + "\n";
        } else if (entry.kind == Kind::cells) {
            write_cells(entry.cells, columns, out);
        } else {
            std::vector<std::string> dashes(columns_.size());
            for (std::size_t i = 1; i < dashes.size(); ++i) dashes[i].assign(columns[i], '-');
            write_cells(dashes, columns, out);
        }
    }
    return out;
}

} // namespace quoin
