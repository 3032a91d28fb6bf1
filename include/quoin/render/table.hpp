// A table of text: columns as wide as their cells, headings wrapped, numbers to the right.
//
//   Table table({{"", Align::left}, {"Conventional, 5% down", Align::right}});
//   table.row({"principal and interest", "$2,845.12"});
//   table.rule();
//   std::cout << table.text();
//
// Where a line has no room for it, names are wrapped first. Then its columns stand in groups one
// below the other, or the figures of a row below its name. A figure is never cut.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace quoin {

/// The width of a line where nobody says another.
inline constexpr std::size_t usual_width = 100;
/// Of lines that are not to be broken.
inline constexpr std::size_t unbroken = 1'000'000;

/// Words behind an indent: the first line behind `first`, all others behind `rest`.
struct Indented {
    std::string words;
    std::string first;
    std::string rest;
    std::size_t spare = 0; ///< so much shorter than a line may be
};

enum class Align { left, right };

struct Column {
    std::string heading;
    Align align = Align::left;
    std::size_t widest_heading = 14; ///< headings are wrapped to this
    std::size_t least = 0;           ///< width it has where there is room
    std::size_t most = 1000;         ///< cells of words are wrapped to this
};

class Table {
  public:
    explicit Table(std::vector<Column> columns, std::string indent = "  ");

    void row(std::vector<std::string> cells); ///< fewer cells than columns: the rest is empty
    void rule();                              ///< a line under the figures above
    void gap();                               ///< an empty line
    void title(std::string text);             ///< a line across all columns
    /// Words across all columns, so wide behind their indent on a line of the usual width.
    void words(const std::string& text, const std::string& first, const std::string& rest,
               std::size_t width);
    /// What is to be said of the row above, likewise; nothing where it is empty.
    void remark(const std::string& words, std::size_t width);

    /// Its columns are what is compared: where there is no room, they stand in groups.
    Table& beside();

    [[nodiscard]] std::string text(std::size_t width = usual_width) const;

  private:
    enum class Kind { cells, rule, gap, words };
    struct Entry {
        Kind kind = Kind::cells;
        std::vector<std::string> cells = {};
        Indented said = {};
    };
    using Widths = std::vector<std::size_t>;

    [[nodiscard]] std::size_t heading_width(std::size_t column, std::size_t widest) const;
    [[nodiscard]] std::size_t cells_width(std::size_t column) const;
    [[nodiscard]] std::size_t longest_word(std::size_t column) const;
    [[nodiscard]] Widths wanted() const;
    [[nodiscard]] Widths least() const;
    [[nodiscard]] std::size_t whole(const Widths& widths) const;
    [[nodiscard]] std::optional<Widths> narrowed(std::size_t width) const;

    [[nodiscard]] std::string written(const Widths& widths, std::size_t width) const;
    [[nodiscard]] std::string in_groups(std::size_t width) const;
    [[nodiscard]] Table of_columns(std::size_t from, std::size_t to) const;
    [[nodiscard]] Table stacked() const;
    void stack_row(const std::vector<std::string>& cells, Table& onto) const;

    void write_cells(const std::vector<std::string>& cells, const Widths& widths,
                     std::string& out) const;
    void write_wrapped(const std::vector<std::string>& cells, const Widths& widths,
                       std::string& out) const;
    void write_headings(const Widths& widths, std::string& out) const;

    std::vector<Column> columns_;
    std::string indent_;
    bool beside_ = false;
    std::vector<Entry> entries_;
};

/// Blanks between two columns.
inline constexpr std::size_t between_columns = 2;

/// How many blanks a text begins with.
[[nodiscard]] std::size_t lead_in(const std::string& text);

/// Width on a terminal: UTF-8 code points, each one cell.
[[nodiscard]] std::size_t display_width(const std::string& text);

/// A text broken into lines at spaces, no wider than `width` where its words allow it.
[[nodiscard]] std::vector<std::string> wrapped(const std::string& text, std::size_t width);

/// Words on lines of this width; a word that is wider than a line is broken.
[[nodiscard]] std::string lines_of(const Indented& said, std::size_t width);
/// A text as it is where it fits, else what does not fit on lines below, two further in.
[[nodiscard]] std::vector<std::string> hung(const std::string& text, std::size_t width,
                                            bool breaks_words);

} // namespace quoin
