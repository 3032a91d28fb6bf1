// Lines and columns of a text.
#include <quoin/text/source.hpp>

#include <algorithm>

namespace quoin {

Source::Source(std::string name, std::string text)
    : name_(std::move(name)), text_(std::move(text)), line_starts_{0} {
    for (std::size_t i = text_.find('\n'); i != std::string::npos; i = text_.find('\n', i + 1)) {
        line_starts_.push_back(i + 1);
    }
}

Source::Position Source::position(std::size_t offset) const {
    const auto after = std::upper_bound(line_starts_.begin(), line_starts_.end(), offset);
    const auto line = after - line_starts_.begin();
    const std::size_t start = line_starts_[static_cast<std::size_t>(line - 1)];
    return {static_cast<int>(line), static_cast<int>(offset - start) + 1};
}

std::string_view Source::line(int number) const {
    const std::size_t start = line_starts_[static_cast<std::size_t>(number - 1)];
    const auto next = static_cast<std::size_t>(number);
    const std::size_t end = next < line_starts_.size() ? line_starts_[next] - 1 : text_.size();
    std::string_view rest = text().substr(start, end - start);
    if (!rest.empty() && rest.back() == '\r') rest.remove_suffix(1);
    return rest;
}

} // namespace quoin
