// Reading how what can be chosen is shown, and the names of files beside a price book.
#include "book_reader.hpp"

#include <algorithm>

#include "contrast.hpp"

namespace quoin {
namespace {

bool is_hex(char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); }

/// "#8a9a7b"
bool is_color(std::string_view text) {
    return text.size() == 7 && text.front() == '#' &&
           std::all_of(text.begin() + 1, text.end(), is_hex);
}

std::string read_color(Reader& item, std::string_view key) {
    std::string color = item.text_or(key, "");
    if (!item.has(key) || is_color(color)) return color;
    item.report(problems::not_a_color(item.spot(key)));
    return {};
}

/// A relative path of letters, digits, dots, hyphens and underlines that never leads upward.
bool leads_below(std::string_view path) {
    if (path.empty() || path.front() == '/' || path.back() == '/') return false;
    if (path.find("..") != std::string_view::npos) return false;
    if (path.find("//") != std::string_view::npos) return false;
    return std::all_of(path.begin(), path.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
               c == '/' || c == '.' || c == '-' || c == '_';
    });
}

} // namespace

std::string file_below(Reader& reader, std::string_view key) {
    std::string file = reader.text_or(key, "");
    if (!reader.has(key) || leads_below(file)) return file;
    reader.report(problems::file_elsewhere(reader.spot(key)));
    return {};
}

std::string color_for_letters(Reader& item, std::string_view key) {
    std::string color = read_color(item, key);
    if (color.empty() || is_readable_on_white(color)) return color;
    item.report(problems::color_too_light(item.spot(key)));
    return {};
}

Look read_look(Reader& item) { return {file_below(item, "picture"), read_color(item, "color")}; }

} // namespace quoin
