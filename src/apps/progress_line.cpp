// Writing over one line of standard error.
#include "progress_line.hpp"

#include <cstdio>

#include <unistd.h>

#include <quoin/render/table.hpp>

namespace quoin::apps {
namespace {

/// Where the last letter of a text in UTF-8 begins.
std::size_t last_letter(const std::string& text) {
    std::size_t at = text.size() - 1;
    while (at > 0 && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U) --at;
    return at;
}

} // namespace

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
    while (display_width(text) > widest) text.erase(last_letter(text));
    const std::size_t width = display_width(text);
    if (width < width_) text.append(width_ - width, ' '); // over what stood there
    std::fprintf(stderr, "\r%s", text.c_str());
    std::fflush(stderr);
    width_ = width;
    last_ = std::chrono::steady_clock::now();
}

} // namespace quoin::apps
