// Telling the kinds of files apart.
#include <quoin/inquiry/desk.hpp>

#include <quoin/text/value.hpp>

namespace quoin {

FileKind kind_of(const Document& document) {
    const Value* format = document.root.find("format");
    if (format == nullptr) return FileKind::unknown;
    const Words<FileKind> kinds = {
        {"quoin/pricebook/1", FileKind::price_book}, {"quoin/inquiry/1", FileKind::inquiry},
        {"quoin/program/1", FileKind::program},      {"quoin/rates/1", FileKind::rate_sheet},
        {"quoin/place/1", FileKind::place},          {"quoin/apr/1", FileKind::apr_problem}};
    for (const auto& [name, kind] : kinds) {
        if (format->literal == name) return kind;
    }
    return FileKind::unknown;
}

} // namespace quoin
