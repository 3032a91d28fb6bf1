// A table of text: columns as wide as their cells, headings wrapped, numbers to the right.
//
//   Table table({{"", Align::left}, {"Conventional, 5% down", Align::right}});
//   table.row({"principal and interest", "$2,845.12"});
//   table.rule();
//   std::cout << table.text();
#pragma once

#include <string>
#include <vector>

namespace quoin {

enum class Align { left, right };

struct Column {
    std::string heading;
    Align align = Align::left;
    std::size_t widest_heading = 14; ///< headings are wrapped to this
    std::size_t least = 0;           ///< width it has at least
};

class Table {
  public:
    explicit Table(std::vector<Column> columns, std::string indent = "  ");

    void row(std::vector<std::string> cells); ///< fewer cells than columns: the rest is empty
    void rule();                              ///< a line under the figures above
    void gap();                               ///< an empty line
    void title(std::string text);             ///< a line across all columns
    /// What is to be said of the row above, on lines of this width; nothing where it is empty.
    void remark(const std::string& words, std::size_t width);

    [[nodiscard]] std::string text() const;

  private:
    enum class Kind { cells, rule, gap, title };
    struct Entry {
        Kind kind = Kind::cells;
        std::vector<std::string> cells;
    };

    [[nodiscard]] std::vector<std::size_t> widths() const;
    void write_cells(const std::vector<std::string>& cells, const std::vector<std::size_t>& widths,
                     std::string& out) const;
    void write_headings(const std::vector<std::size_t>& widths, std::string& out) const;

    std::vector<Column> columns_;
    std::string indent_;
    std::vector<Entry> entries_;
};

/// Width on a terminal: UTF-8 code points, each one cell.
[[nodiscard]] std::size_t display_width(const std::string& text);

/// A text broken into lines at spaces, no wider than `width` where its words allow it.
[[nodiscard]] std::vector<std::string> wrapped(const std::string& text, std::size_t width);

/// The width of the texts that are told on lines.
inline constexpr std::size_t page_width = 98;

/// A title on a line of its own, below an empty one.
[[nodiscard]] std::string titled(const std::string& title);

/// A paragraph: wrapped lines, each behind `indent`, the first behind `first`.
[[nodiscard]] std::string paragraph(const std::string& text, const std::string& first,
                                    const std::string& indent, std::size_t width = page_width);
[[nodiscard]] std::string paragraph(const std::string& text, const std::string& indent = "");

} // namespace quoin
