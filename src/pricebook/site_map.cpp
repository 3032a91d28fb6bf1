// Reading the map of a community's lots, in feet or in degrees.
#include <quoin/pricebook/site_map.hpp>

#include <algorithm>

#include "book_reader.hpp"
#include "map_reader.hpp"

namespace quoin {
namespace {

/// As far as a map reaches from its middle, in feet.
constexpr int farthest = 100'000;

std::optional<std::int64_t> hundredths(const Spot& spot, Findings& findings) {
    const auto feet = as_decimal(spot, findings);
    if (!feet) return std::nullopt;
    if (*feet < Decimal::whole(-farthest) || *feet > Decimal::whole(farthest)) {
        findings.add(problems::not_a_whole_number(spot, -farthest, farthest));
        return std::nullopt;
    }
    return divide_rounded(feet->billionths(), Decimal::hundredth, Rounding::half_away);
}

/// A list of places [x, y], and where it stands.
Outline read_line(Reader& item, std::string_view key) {
    Outline line;
    item.must_have(key);
    item.items(key, [&](const Spot& place) {
        const bool pair = place.value->kind == Value::Kind::list && place.value->items.size() == 2;
        if (!pair) return item.report(problems::outline_unsound(place));
        const auto x =
            hundredths({&place.value->items[0], Path{&place.path, {}, 0}}, item.findings());
        const auto y =
            hundredths({&place.value->items[1], Path{&place.path, {}, 1}}, item.findings());
        if (x && y) line.push_back({*x, *y});
    });
    return line;
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
    lot.index = *index;
    read.lots.emplace_back(item.spot("outline"));
    read.map.lots.push_back(std::move(lot));
}

} // namespace

std::int64_t feet(Reader& item, std::string_view key) {
    item.must_have(key);
    if (!item.has(key)) return 0;
    const auto length = hundredths(item.spot(key), item.findings());
    if (!length || *length >= 0) return length.value_or(0);
    item.report(problems::figure_below_zero(item.spot(key)));
    return 0;
}

std::optional<Index<Lot>> lot_named(Reader& item, const PriceBook& book, const SiteMap& so_far) {
    const auto index = index_member(item, "lot", book.lots, Noun::lot);
    const bool again = index && std::any_of(so_far.lots.begin(), so_far.lots.end(),
                                            [&](const auto& lot) { return lot.index == *index; });
    if (again) item.report(problems::id_repeated(item.spot("lot"), Noun::lot));
    return index;
}

void read_feet(Reader& root, const PriceBook& book, MapRead& read) {
    if (!root.format_is("quoin/map/1")) return;
    read.map.north = root.maybe_whole("north", 0, 359).value_or(0);
    read.map.streets = root.list("streets", [](Reader& item) {
        return Street{item.name("name"), read_line(item, "line"), feet(item, "width")};
    });
    read.map.land = root.list("land", [](Reader& item) {
        return Land{item.name_or("name", ""), item.word<LandKind>("kind"),
                    read_line(item, "outline")};
    });
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
