// Telling the kinds of files apart.
#include <quoin/inquiry/desk.hpp>

#include <quoin/text/value.hpp>

namespace quoin {

namespace {

/// Whether it is GeoJSON: RFC 7946, section 3.3.
bool is_geojson(const Document& document) {
    const Value* type = document.root.find("type");
    return type != nullptr && type->literal == "FeatureCollection";
}

} // namespace

FileKind kind_of(const Document& document) {
    const Value* format = document.root.find("format");
    if (format == nullptr) return is_geojson(document) ? FileKind::site_map : FileKind::unknown;
    const Words<FileKind> kinds = {
        {FileKind::price_book, "quoin/pricebook/1"}, {FileKind::inquiry, "quoin/inquiry/1"},
        {FileKind::program, "quoin/program/1"},      {FileKind::rate_sheet, "quoin/rates/1"},
        {FileKind::place, "quoin/place/1"},          {FileKind::apr_problem, "quoin/apr/1"},
        {FileKind::drawing, "quoin/drawing/1"},      {FileKind::site_map, "quoin/map/1"}};
    return meaning_in(kinds, format->literal).value_or(FileKind::unknown);
}

} // namespace quoin
