// The way to a value, spelled out.
#include <quoin/text/spot.hpp>

namespace quoin {

std::string Path::pointer() const {
    std::string text = parent != nullptr ? parent->pointer() : std::string(base);
    if (index >= 0) return text + "/" + std::to_string(index);
    if (key.empty()) return text;
    text += '/';
    for (const char c : key) {
        text += c == '~' ? std::string("~0") : c == '/' ? std::string("~1") : std::string(1, c);
    }
    return text;
}

} // namespace quoin
