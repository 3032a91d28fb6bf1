// Telling plain text from what steers terminals and turns lines around.
#include <quoin/text/plain.hpp>

#include <algorithm>

#include <fmt/format.h>

namespace quoin {
namespace {

bool begins_letter(char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }

/// How many bytes a letter has that begins so: one where no letter does.
std::size_t bytes_of(char c) {
    const auto lead = static_cast<unsigned char>(c);
    if (lead >= 0xF8U || lead < 0xC0U) return 1;
    return lead >= 0xF0U ? 4 : lead >= 0xE0U ? 3 : 2;
}

/// C0, DEL and C1 controls; line and paragraph separator; the bidirectional formatting characters
/// (Unicode Standard Annex 9, table 4).
bool steers(char32_t code) {
    return code < 0x20 || (code >= 0x7F && code <= 0x9F) || code == 0x61C || code == 0x200E ||
           code == 0x200F || (code >= 0x2028 && code <= 0x202E) ||
           (code >= 0x2066 && code <= 0x2069);
}

} // namespace

std::string_view letter_at(std::string_view text, std::size_t at) {
    const std::size_t most = std::min(at + bytes_of(text[at]), text.size());
    std::size_t end = at + 1;
    while (end < most && !begins_letter(text[end])) ++end;
    return text.substr(at, end - at);
}

char32_t code_point(std::string_view letter) {
    const auto lead = static_cast<unsigned char>(letter.front());
    char32_t code = letter.size() == 1 ? lead : lead & (0x7FU >> letter.size());
    for (const char c : letter.substr(1))
        code = code << 6 | (static_cast<unsigned char>(c) & 0x3FU);
    return code;
}

bool is_plain(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        if (text[i] >= ' ' && text[i] <= '~') { // all that most texts have
            ++i;
            continue;
        }
        const std::string_view letter = letter_at(text, i);
        if (steers(code_point(letter))) return false;
        i += letter.size();
    }
    return true;
}

std::string made_visible(std::string_view text, std::string_view kept) {
    std::string shown;
    for (std::size_t i = 0; i < text.size();) {
        const std::string_view letter = letter_at(text, i);
        const char32_t code = code_point(letter);
        if (steers(code) && kept.find(letter) == std::string_view::npos) {
            shown += fmt::format("\\u{:04X}", static_cast<std::uint32_t>(code));
        } else {
            shown += letter;
        }
        i += letter.size();
    }
    return shown;
}

std::size_t letters_in(std::string_view text) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < text.size(); i += letter_at(text, i).size()) ++count;
    return count;
}

std::string cut(std::string_view text, std::size_t most) {
    std::size_t letters = 0;
    std::size_t last = 0; // where the last letter that may stay begins
    for (std::size_t i = 0; i < text.size(); i += letter_at(text, i).size()) {
        if (++letters == most) last = i;
        if (letters > most) return std::string(text.substr(0, last)) + "…";
    }
    return std::string(text);
}

} // namespace quoin
