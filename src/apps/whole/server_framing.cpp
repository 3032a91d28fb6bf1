// Finding the end of a request.
#include "server_framing.hpp"

#include <algorithm>
#include <charconv>

#include "server_requests.hpp"

namespace quoin::apps {
namespace {

constexpr std::string_view empty_line = "\n\r\n";

/// The end of the head, or 0. Lines end where the parser says: at a line feed; and the empty one,
/// with both of its bytes.
std::size_t head_end(std::string_view sent, std::size_t from) {
    if (sent.substr(0, 2) == "\r\n") return 2;
    const std::size_t found = sent.find(empty_line, from);
    return found == std::string_view::npos ? 0 : found + empty_line.size();
}

bool is_content_length(std::string_view name) {
    constexpr std::string_view wanted = "content-length";
    return name.size() == wanted.size() &&
           std::equal(name.begin(), name.end(), wanted.begin(), [](char given, char small) {
               return given == small || (small != '-' && given == small - 'a' + 'A');
           });
}

/// The length of the body; 0 where the head does not say it once, or says one above the limit.
std::size_t body_length(std::string_view head) {
    std::size_t length = 0;
    bool said = false;
    while (!head.empty()) {
        const std::string_view line = head.substr(0, head.find('\n') + 1);
        head.remove_prefix(line.empty() ? head.size() : line.size());
        const std::size_t colon = line.find(':');
        if (colon == std::string_view::npos || !is_content_length(line.substr(0, colon))) continue;
        const std::string_view digits = trimmed(line.substr(colon + 1));
        const char* const end = digits.data() + digits.size();
        const auto [stopped, error] = std::from_chars(digits.data(), end, length);
        if (said || error != std::errc() || stopped != end) return 0;
        said = true;
    }
    return length > largest_body ? 0 : length;
}

} // namespace

Framing framing_of(std::string_view sent, std::size_t& looked) {
    const std::size_t head = head_end(sent, looked < empty_line.size() ? 0 : looked - 2);
    looked = head > 0 ? looked : sent.size();
    if (head == 0 && sent.size() > largest_head) return {Framing::State::whole, 0, sent.size()};
    if (head == 0) return {};
    const std::size_t size = head + body_length(sent.substr(0, head));
    return {sent.size() < size ? Framing::State::in_body : Framing::State::whole, head, size};
}

} // namespace quoin::apps
