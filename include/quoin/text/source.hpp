// A text that was read, by name, and the places in it.
//
//   Source source("lots.csv", "id,premium\n7,8500\n");
//   source.position(11)  ->  {2, 1}
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace quoin {

class Source {
  public:
    struct Position {
        int line = 1;   ///< from 1
        int column = 1; ///< in bytes, from 1
    };

    Source(std::string name, std::string text);

    [[nodiscard]] const std::string& name() const { return name_; }
    [[nodiscard]] std::string_view text() const { return text_; }
    [[nodiscard]] Position position(std::size_t offset) const;
    [[nodiscard]] std::string_view line(int number) const; ///< without its line end

  private:
    std::string name_;
    std::string text_;
};

/// A stretch of a source: bytes begin to end. `source` outlives every place in it.
struct Span {
    const Source* source = nullptr;
    std::uint32_t begin = 0;
    std::uint32_t end = 0;
};

} // namespace quoin
