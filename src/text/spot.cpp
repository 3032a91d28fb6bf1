// The way to a value, spelled out.
#include <quoin/text/spot.hpp>

namespace quoin {
namespace {

void append_key(std::string_view key, std::string& pointer) {
    for (const char c : key) {
        if (c == '~') {
            pointer += "~0";
        } else if (c == '/') {
            pointer += "~1";
        } else {
            pointer += c;
        }
    }
}

void append(const Path& path, std::string& pointer) {
    if (path.parent != nullptr) {
        append(*path.parent, pointer);
    } else {
        pointer += path.base;
    }
    if (path.index >= 0) {
        pointer += '/';
        pointer += std::to_string(path.index);
    } else if (!path.key.empty()) {
        pointer += '/';
        append_key(path.key, pointer);
    }
}

} // namespace

std::string Path::pointer() const {
    std::string text;
    append(*this, text);
    return text;
}

} // namespace quoin
