// Reading the map of a community's lots, in feet or in degrees.
#include <quoin/pricebook/site_map.hpp>

#include <algorithm>

#include "book_reader.hpp"
#include "feet.hpp"
#include "map_reader.hpp"

namespace quoin {
namespace {

/// As far as a map reaches from its zero.
constexpr FeetRange on_sheet{-100'000, 100'000};

Outline read_line(Reader& item, std::string_view key) {
    Outline line;
    item.must_have(key);
    const auto read = [&](const Spot& spot) {
        if (const auto place = as_place(spot, on_sheet, item.findings())) line.push_back(*place);
    };
    item.items(key, read, caps::map_corners);
    return line;
}

Street read_street(Reader& item) {
    Street street{item.name("name"), read_line(item, "line"), feet(item, "width")};
    hold_to_line(item, "line", street.line.size());
    return street;
}

void read_land(Reader& item, MapRead& read) {
    read.map.land.push_back(
        {item.name_or("name", ""), item.word<LandKind>("kind"), read_line(item, "outline")});
    read.land.emplace_back(item.spot("outline"));
}

void read_lot(Reader& item, const PriceBook& book, MapRead& read) {
    LotOutline lot;
    const auto index = lot_named(item, book, read.map);
    lot.outline = read_line(item, "outline");
    const int corners = static_cast<int>(std::max<std::size_t>(lot.outline.size(), 1));
    lot.front = static_cast<std::size_t>(item.whole("front", 0, corners - 1));
    const auto setbacks = [&](Reader& from) {
        lot.front_setback = feet(from, "front");
        lot.side_setback = feet(from, "side");
        lot.rear_setback = feet(from, "rear");
    };
    item.object("setbacks", setbacks, true);
    if (!index) return;
    lot.lot = *index;
    read.lots.emplace_back(item.spot("outline"));
    read.map.lots.push_back(std::move(lot));
}

} // namespace

void hold_to_line(Reader& item, std::string_view key, std::size_t places) {
    if (places < 2 && item.sound()) item.report(problems::outline_unsound(item.spot(key)));
}

std::int64_t feet(Reader& item, std::string_view key) {
    item.must_have(key);
    if (!item.has(key)) return 0;
    const auto found = as_feet(item.spot(key), on_sheet, item.findings());
    if (!found || *found >= 0) return found.value_or(0);
    item.report(problems::figure_below_zero(item.spot(key)));
    return 0;
}

std::optional<Index<Lot>> lot_named(Reader& item, const PriceBook& book, const SiteMap& so_far) {
    const auto lot = index_member(item, "lot", book.lots, Noun::lot);
    const bool again = lot && std::any_of(so_far.lots.begin(), so_far.lots.end(),
                                          [&](const LotOutline& one) { return one.lot == *lot; });
    if (again) item.report(problems::id_repeated(item.spot("lot"), Noun::lot));
    return lot;
}

void read_feet(Reader& root, const PriceBook& book, MapRead& read) {
    if (!root.format_is("quoin/map/1")) return;
    read.map.north = root.maybe_whole("north", 0, 359).value_or(0);
    read.map.streets = root.list("streets", read_street);
    root.each("land", [&](Reader& item) { read_land(item, read); });
    root.each(
        "lots", [&](Reader& item) { read_lot(item, book, read); }, true);
    root.finish();
}

SiteMap read_site_map(const Document& document, const PriceBook& book,
                      const PerItem<Plan, Footprint>& footprints, Findings& findings) {
    MapRead read;
    read.map.file = document.source->name();
    Reader root(document.root, Path{}, findings);
    read.whole = Mark(root.here());
    const bool of_features = document.root.find("format") == nullptr && root.has("type");
    of_features ? read_degrees(root, book, read) : read_feet(root, book, read);
    if (root.sound()) check_site_map(read, book, footprints, findings);
    return std::move(read.map);
}

} // namespace quoin
