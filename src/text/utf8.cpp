// Checking UTF-8 byte by byte.
#include "utf8.hpp"

namespace quoin {

std::size_t first_bad_byte(std::string_view text) {
    std::size_t i = 0;
    while (i < text.size()) {
        const auto lead = static_cast<unsigned char>(text[i]);
        const std::size_t more = lead < 0x80                   ? 0
                                 : lead >= 0xC2 && lead < 0xE0 ? 1
                                 : lead >= 0xE0 && lead < 0xF0 ? 2
                                 : lead >= 0xF0 && lead < 0xF5 ? 3
                                                               : text.size();
        if (more >= text.size() - i && more != 0) return i;
        for (std::size_t k = 1; k <= more; ++k) {
            if ((static_cast<unsigned char>(text[i + k]) & 0xC0) != 0x80) return i;
        }
        i += 1 + more;
    }
    return text.size();
}

std::string made_printable(std::string_view text) {
    std::string shown;
    while (!text.empty()) {
        const std::size_t good = first_bad_byte(text);
        shown += text.substr(0, good);
        if (good == text.size()) break;
        shown += '?';
        text.remove_prefix(good + 1);
    }
    return shown;
}

} // namespace quoin
