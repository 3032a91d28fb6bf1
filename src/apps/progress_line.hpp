// One line on standard error that says how far long work is, updated in place.
#pragma once

#include <chrono>
#include <string>

namespace quoin::apps {

class ProgressLine {
  public:
    /// Shown where standard error is a terminal, or where it is `asked` for.
    explicit ProgressLine(bool asked);
    /// Wipes the line.
    ~ProgressLine();
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;

    /// Whether it is shown and a fifth of a second has passed since it was last written.
    [[nodiscard]] bool is_due() const;
    /// Cut to the width of a narrow terminal, so that it never wraps.
    void write(std::string text);

  private:
    bool shown_;
    std::size_t width_ = 0; ///< of what stands there
    std::chrono::steady_clock::time_point last_;
};

} // namespace quoin::apps
