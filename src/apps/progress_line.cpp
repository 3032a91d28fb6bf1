// Writing over one line of standard error.
#include "progress_line.hpp"

#include <algorithm>
#include <cstdio>

#include <unistd.h>

namespace quoin::apps {

ProgressLine::ProgressLine(bool asked)
    : shown_(asked || isatty(STDERR_FILENO) == 1), last_(std::chrono::steady_clock::now()) {}

ProgressLine::~ProgressLine() {
    if (width_ == 0) return;
    write("");
    std::fputc('\r', stderr);
}

bool ProgressLine::is_due() const {
    constexpr std::chrono::milliseconds pause(200);
    return shown_ && std::chrono::steady_clock::now() - last_ >= pause;
}

void ProgressLine::write(std::string text) {
    constexpr std::size_t widest = 78;
    if (text.size() > widest) text = text.substr(0, widest);
    const std::size_t width = text.size();
    text.resize(std::max(width, width_), ' '); // over what stood there
    std::fprintf(stderr, "\r%s", text.c_str());
    std::fflush(stderr);
    width_ = width;
    last_ = std::chrono::steady_clock::now();
}

} // namespace quoin::apps
