// Text before it is laid out: lines, paragraphs and tables in their order, which know no width yet.
//
//   Blocks out = titled("The loans");
//   out += paragraph(terms, "  ", "    ");
//   out += table;
//   std::cout << out.text(80);
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include <quoin/render/table.hpp>

namespace quoin {

/// Figures on one line, with marks between them; where they do not fit, the line goes on below.
struct OneLine {
    std::vector<std::string> parts;
};

class Blocks {
  public:
    Blocks() = default;
    // What is said becomes a block by standing where one is wanted.
    Blocks(std::string lines); ///< as they are; one that is too long goes on below itself
    Blocks(const char* lines) : Blocks(std::string(lines)) {}
    Blocks(Indented paragraph);
    Blocks(Table table);
    Blocks(OneLine line);

    Blocks& operator+=(Blocks more);
    friend Blocks operator+(Blocks first, Blocks then) { return first += std::move(then); }

    [[nodiscard]] bool empty() const { return blocks_.empty(); }
    /// No line is wider.
    [[nodiscard]] std::string text(std::size_t width = usual_width) const;

  private:
    std::vector<std::variant<std::string, Indented, Table, OneLine>> blocks_;
};

/// A title on a line of its own, below an empty one.
[[nodiscard]] Blocks titled(const std::string& title);

/// A paragraph: each line behind `indent`, the first behind `first`, two short of the whole width.
[[nodiscard]] Blocks paragraph(const std::string& text, const std::string& first,
                               const std::string& indent);
[[nodiscard]] Blocks paragraph(const std::string& text, const std::string& indent = "");

} // namespace quoin
