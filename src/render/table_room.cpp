// How a table uses the room of a line: what each column wants, what it needs, and what is done
// where even that is too much.
#include <quoin/render/table.hpp>

#include <algorithm>
#include <numeric>

namespace quoin {
namespace {

constexpr std::size_t short_name = 12; ///< a name no longer than that is told with what it names
constexpr std::size_t short_words = 18;

std::size_t longest(const std::vector<std::string>& lines) {
    std::size_t width = 0;
    for (const std::string& line : lines) width = std::max(width, display_width(line));
    return width;
}

} // namespace

std::size_t Table::heading_width(std::size_t column, std::size_t widest) const {
    return longest(wrapped(columns_[column].heading, widest));
}

std::size_t Table::cells_width(std::size_t column) const {
    std::size_t width = 0;
    for (const Entry& entry : entries_) {
        if (entry.kind != Kind::cells) continue;
        width = std::max(width, display_width(entry.cells[column]));
    }
    if (columns_[column].align == Align::right || width <= columns_[column].most) return width;
    return std::max(columns_[column].most, longest_word(column));
}

/// With the indent that a word has where it begins a line of its cell.
std::size_t Table::longest_word(std::size_t column) const {
    std::size_t width = 0;
    for (const Entry& entry : entries_) {
        if (entry.kind != Kind::cells) continue;
        const std::string& cell = entry.cells[column];
        for (const std::string& line : hung(cell, lead_in(cell) + 1, false)) {
            width = std::max(width, display_width(line));
        }
    }
    return width;
}

Table::Widths Table::wanted() const {
    Widths widths;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        widths.push_back(std::max(
            {columns_[i].least, cells_width(i), heading_width(i, columns_[i].widest_heading)}));
    }
    return widths;
}

/// Figures as wide as they are, words down to the longest of them, or to what can still be read.
Table::Widths Table::least() const {
    Widths widths;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        std::size_t width = cells_width(i);
        if (columns_[i].align == Align::left) {
            const std::size_t readable = i == 0 ? std::size_t{18} : std::size_t{10};
            width = std::max(longest_word(i), std::min(width, readable));
        }
        widths.push_back(std::max(width, heading_width(i, 1)));
    }
    return widths;
}

std::size_t Table::whole(const Widths& widths) const {
    return std::accumulate(widths.begin(), widths.end(),
                           display_width(indent_) + between_columns * (widths.size() - 1));
}

/// Widths that fit: first without what columns have beyond their cells, then with words wrapped,
/// always those of the widest column. Nothing where that is not enough.
std::optional<Table::Widths> Table::narrowed(std::size_t width) const {
    const Widths least = this->least();
    if (whole(least) > width) return std::nullopt;
    Widths widths = wanted();
    const auto shrink_to = [&](const auto& bound) {
        while (whole(widths) > width) {
            std::size_t widest = widths.size();
            for (std::size_t i = 0; i < widths.size(); ++i) {
                const bool can = widths[i] > std::max(least[i], bound(i));
                if (can && (widest == widths.size() || widths[i] > widths[widest])) widest = i;
            }
            if (widest == widths.size()) return;
            --widths[widest];
        }
    };
    shrink_to([&](std::size_t i) { return cells_width(i); });
    shrink_to([](std::size_t) { return std::size_t{0}; });
    return widths;
}

Table Table::of_columns(std::size_t from, std::size_t to) const {
    const auto part = [&](const auto& whole) {
        auto some = whole;
        some.assign(whole.begin(), whole.begin() + 1);
        some.insert(some.end(), whole.begin() + static_cast<std::ptrdiff_t>(from),
                    whole.begin() + static_cast<std::ptrdiff_t>(to));
        return some;
    };
    Table table(part(columns_), indent_);
    for (const Entry& entry : entries_) {
        table.entries_.push_back(entry);
        if (entry.kind == Kind::cells) table.entries_.back().cells = part(entry.cells);
    }
    return table;
}

std::string Table::in_groups(std::size_t width) const {
    const Widths least = this->least();
    std::string out;
    for (std::size_t from = 1; from < columns_.size();) {
        std::size_t to = from + 1;
        std::size_t taken = display_width(indent_) + least[0] + between_columns + least[from];
        while (to < columns_.size() && taken + between_columns + least[to] <= width) {
            taken += between_columns + least[to++];
        }
        out += (out.empty() ? "" : "\n") + of_columns(from, to).text(width);
        from = to;
    }
    return out;
}

/// A row's name, with the amount at its end, then each other figure under it with what it is.
void Table::stack_row(const std::vector<std::string>& cells, Table& onto) const {
    const std::size_t last = columns_.size() - 1;
    const bool amount = columns_[last].heading.empty() && columns_[last].align == Align::right;
    const std::string lead(lead_in(cells[0]), ' ');
    if (!columns_[0].heading.empty() && cells_width(0) <= short_name) {
        onto.row({columns_[0].heading, cells[0]});
    } else if (amount && !cells[last].empty()) {
        onto.row({cells[0], cells[last]});
    } else if (!cells[0].empty()) {
        onto.title(cells[0]);
    }
    for (std::size_t i = 1; i < (amount ? last : cells.size()); ++i) {
        if (cells[i].empty()) continue;
        if (columns_[i].heading.empty()) {
            onto.title(lead + "    " + cells[i]);
        } else if (columns_[i].align == Align::left && display_width(cells[i]) > short_words) {
            onto.title(lead + "    " + columns_[i].heading + ": " + cells[i]);
        } else {
            onto.row({lead + "    " + columns_[i].heading, cells[i]});
        }
    }
}

Table Table::stacked() const {
    Table table({{"", Align::left}, {"", Align::right}}, indent_);
    for (const Entry& entry : entries_) {
        if (entry.kind == Kind::cells) {
            stack_row(entry.cells, table);
        } else {
            table.entries_.push_back(entry);
        }
    }
    return table;
}

} // namespace quoin
