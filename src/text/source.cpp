// Lines and columns of a text.
#include <quoin/text/source.hpp>

#include <algorithm>

namespace quoin {

Source::Source(std::string name, std::string text)
    : name_(std::move(name)), text_(std::move(text)) {}

Source::Position Source::position(std::size_t offset) const {
    const std::string_view before = text().substr(0, offset);
    const std::size_t line_end = before.rfind('\n');
    const std::size_t start = line_end == std::string_view::npos ? 0 : line_end + 1;
    const auto lines = std::count(before.begin(), before.end(), '\n');
    return {static_cast<int>(lines) + 1, static_cast<int>(before.size() - start) + 1};
}

std::string_view Source::line(int number) const {
    std::string_view rest = text();
    for (int above = 1; above < number; ++above) rest.remove_prefix(rest.find('\n') + 1);
    rest = rest.substr(0, rest.find('\n'));
    if (!rest.empty() && rest.back() == '\r') rest.remove_suffix(1);
    return rest;
}

} // namespace quoin
