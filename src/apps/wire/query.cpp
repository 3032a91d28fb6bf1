// Reading the options behind an address.
#include "query.hpp"

#include <algorithm>
#include <charconv>
#include <optional>

namespace quoin::apps {
namespace {

/// The byte that the two digits behind a percent sign say; nothing where they are no such digits.
std::optional<char> byte_of(std::string_view digits) {
    unsigned char byte = 0;
    const char* const end = digits.data() + digits.size();
    const auto [stopped, error] = std::from_chars(digits.data(), end, byte, 16);
    if (digits.size() != 2 || error != std::errc() || stopped != end) return {};
    return static_cast<char>(byte);
}

} // namespace

std::string decoded(std::string_view text, Plus plus) {
    std::string made;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto byte = text[i] == '%' ? byte_of(text.substr(i + 1, 2)) : std::nullopt;
        if (byte) {
            made += *byte;
            i += 2;
        } else {
            made += text[i] == '+' && plus == Plus::space ? ' ' : text[i];
        }
    }
    return made;
}

Given given_in(std::string_view address) {
    Given given;
    const std::size_t mark = address.find('?');
    std::string_view rest = mark == std::string_view::npos ? "" : address.substr(mark + 1);
    while (!rest.empty()) {
        const std::string_view part = rest.substr(0, rest.find('&'));
        rest.remove_prefix(std::min(part.size() + 1, rest.size()));
        if (part.empty()) continue;
        const std::size_t sign = std::min(part.find('='), part.size());
        const std::string_view value = part.substr(std::min(sign + 1, part.size()));
        given.emplace(decoded(part.substr(0, sign), Plus::space), decoded(value, Plus::space));
    }
    return given;
}

std::string path_in(std::string_view address) {
    return decoded(address.substr(0, address.find('?')), Plus::plus);
}

} // namespace quoin::apps
