// Reading a map out of GeoJSON (RFC 7946), as surveyors' and counties' programs write it.
//
// Members that the format leaves to others are passed over (section 6.1), so are properties that
// say nothing about lots, streets or land.
#include <algorithm>
#include <limits>

#include "book_reader.hpp"
#include "earth.hpp"
#include "ground.hpp"
#include "map_reader.hpp"

namespace quoin {
namespace {

using Positions = std::vector<Position>;

/// What is read of the features before the middle of the map is known.
struct Features {
    std::vector<std::pair<Street, Positions>> streets;
    std::vector<std::pair<Land, Positions>> land;
    std::vector<std::pair<LotOutline, Positions>> lots;
    std::vector<Mark> lot_marks;
    std::vector<Mark> land_marks;
    std::vector<std::optional<std::size_t>> fronts; ///< where a lot tells it
};

/// Degrees are written with any number of decimals; what is below a billionth is cut off.
std::optional<std::int64_t> degrees(const Spot& spot, int most, Findings& findings) {
    Value shorter = *spot.value;
    const std::size_t point = shorter.literal.find('.');
    const bool plain = shorter.literal.find_first_of("eE") == std::string::npos;
    if (plain && point != std::string::npos) {
        shorter.literal.resize(std::min(shorter.literal.size(), point + 1 + Decimal::max_decimals));
    }
    const auto figure = as_decimal({&shorter, spot.path}, findings);
    if (!figure) return std::nullopt;
    if (*figure < Decimal::whole(-most) || *figure > Decimal::whole(most)) {
        findings.add(problems::number_too_large(spot.value->place, spot.value->literal));
        return std::nullopt;
    }
    return figure->billionths();
}

/// Longitude, latitude and perhaps a height, which is passed over (section 3.1.1).
std::optional<Position> read_position(const Spot& place, Findings& findings) {
    if (place.value->kind != Value::Kind::list || place.value->items.size() < 2) {
        findings.add(problems::not_a_list(place));
        return std::nullopt;
    }
    const auto longitude =
        degrees({&place.value->items[0], Path{&place.path, {}, 0}}, 180, findings);
    const auto latitude = degrees({&place.value->items[1], Path{&place.path, {}, 1}}, 90, findings);
    if (!longitude || !latitude) return std::nullopt;
    return Position{*longitude, *latitude};
}

Positions read_positions(const Spot& list, Findings& findings) {
    Positions line;
    if (list.value->kind != Value::Kind::list) {
        findings.add(problems::not_a_list(list));
        return line;
    }
    if (list.value->items.size() > caps::map_corners) {
        findings.add(problems::too_many(list, list.value->items.size(), caps::map_corners));
        return line;
    }
    int index = 0;
    for (const Value& item : list.value->items) {
        const auto position = read_position({&item, Path{&list.path, {}, index++}}, findings);
        if (position) line.push_back(*position);
    }
    return line;
}

/// The outer ring of a polygon, whose last position repeats the first (section 3.1.6).
Positions read_ring(const Spot& rings, Findings& findings) {
    const bool some = rings.value->kind == Value::Kind::list && !rings.value->items.empty();
    if (!some) {
        findings.add(problems::not_a_list(rings));
        return {};
    }
    if (rings.value->items.size() > 1) { // a hole
        findings.add(problems::too_many(rings, rings.value->items.size(), 1));
        return {};
    }
    const Spot outer{&rings.value->items[0], Path{&rings.path, {}, 0}};
    const std::size_t found = findings.problems().size();
    Positions ring = read_positions(outer, findings);
    if (findings.problems().size() > found) return {};
    if (ring.size() < 4 || ring.front() != ring.back()) {
        findings.add(problems::outline_unsound(outer));
        return {};
    }
    ring.pop_back();
    return ring;
}

/// The positions of a feature's geometry, which has to be of this type.
Positions read_geometry(Reader& feature, std::string_view type) {
    Positions line;
    const auto read = [&](Reader& geometry) {
        geometry.leave("bbox");
        if (geometry.text("type") != type) {
            report_not_one_of(geometry.spot("type"), {std::string(type)}, geometry.findings());
            return geometry.leave("coordinates");
        }
        geometry.must_have("coordinates");
        if (!geometry.has("coordinates")) return;
        const Spot spot = geometry.spot("coordinates");
        line = type == "Polygon" ? read_ring(spot, geometry.findings())
                                 : read_positions(spot, geometry.findings());
    };
    feature.object("geometry", read, true);
    return line;
}

void read_lot_feature(Reader& feature, Reader& of, const PriceBook& book, MapRead& read,
                      Features& features) {
    LotOutline lot;
    const auto index = lot_named(of, book, read.map);
    lot.front_setback = feet(of, "front_setback_ft");
    lot.side_setback = feet(of, "side_setback_ft");
    lot.rear_setback = feet(of, "rear_setback_ft");
    Positions ring = read_geometry(feature, "Polygon");
    const int corners = static_cast<int>(std::max<std::size_t>(ring.size(), 1));
    const auto front = of.maybe_whole("front", 0, corners - 1);
    if (!index) return;
    lot.lot = *index;
    read.map.lots.push_back(lot); // its outline follows
    features.lots.emplace_back(std::move(lot), std::move(ring));
    features.lot_marks.emplace_back(feature.spot("geometry"));
    features.fronts.push_back(front ? std::optional(static_cast<std::size_t>(*front))
                                    : std::nullopt);
}

/// By its properties: a lot, a street or land.
void read_feature(Reader& feature, const PriceBook& book, MapRead& read, Features& features) {
    const Value* members = feature.raw("properties");
    if (members == nullptr || members->kind != Value::Kind::object) {
        return feature.object(
            "properties", [](Reader&) {}, true);
    }
    const Spot spot = feature.spot("properties");
    Reader of(*members, spot.path, feature.findings());
    if (of.has("street")) {
        Street street{of.name("street"), {}, feet(of, "width_ft")};
        Positions line = read_geometry(feature, "LineString");
        hold_to_line(feature, "geometry", line.size());
        features.streets.emplace_back(std::move(street), std::move(line));
    } else if (of.has("land")) {
        Land land{of.name_or("name", ""), of.word<LandKind>("land"), {}};
        features.land.emplace_back(std::move(land), read_geometry(feature, "Polygon"));
        features.land_marks.emplace_back(feature.spot("geometry"));
    } else {
        read_lot_feature(feature, of, book, read, features);
    }
}

Position middle_of(const Features& features) {
    constexpr auto most = std::numeric_limits<std::int64_t>::max();
    Position least{most, most};
    Position greatest{-most, -most};
    const auto take = [&](const auto& list) {
        for (const auto& [item, line] : list) {
            for (const Position& at : line) {
                least = {std::min(least.longitude, at.longitude),
                         std::min(least.latitude, at.latitude)};
                greatest = {std::max(greatest.longitude, at.longitude),
                            std::max(greatest.latitude, at.latitude)};
            }
        }
    };
    take(features.streets), take(features.land), take(features.lots);
    if (least.longitude > greatest.longitude) return {};
    return {least.longitude + (greatest.longitude - least.longitude) / 2,
            least.latitude + (greatest.latitude - least.latitude) / 2};
}

/// The square of how far a place is from a side of a street's line.
Int128 square_away(const Point& place, const OutlineSide& side) {
    const Int128 dx = side.to.x - side.from.x;
    const Int128 dy = side.to.y - side.from.y;
    const Int128 x = place.x - side.from.x;
    const Int128 y = place.y - side.from.y;
    const Int128 reach = x * dx + y * dy;
    if (reach > 0 && reach < dx * dx + dy * dy) {
        const Int128 away = (x * dy - y * dx) / length_of(side);
        return away * away;
    }
    return reach <= 0 ? x * x + y * y : (x - dx) * (x - dx) + (y - dy) * (y - dy);
}

/// The side of a lot whose middle is nearest to a street's line.
std::size_t front_of(const Outline& lot, const std::vector<Street>& streets) {
    std::size_t front = 0;
    std::optional<Int128> least;
    for (std::size_t i = 0; i < lot.size(); ++i) {
        const Point& next = lot[(i + 1) % lot.size()];
        const Point middle{(lot[i].x + next.x) / 2, (lot[i].y + next.y) / 2};
        for (const Street& street : streets) {
            for (std::size_t j = 0; j + 1 < street.line.size(); ++j) {
                const Int128 away = square_away(middle, {street.line[j], street.line[j + 1]});
                if (least && *least <= away) continue;
                least = away;
                front = i;
            }
        }
    }
    return front;
}

void lay_flat(Features features, MapRead& read) {
    const Position middle = middle_of(features);
    const Degree degree = degree_at(middle.latitude);
    const auto flat = [&](const Positions& line) {
        Outline outline;
        for (const Position& at : line) outline.push_back(laid_flat(at, middle, degree));
        return outline;
    };
    for (auto& [street, line] : features.streets) {
        street.line = flat(line);
        read.map.streets.push_back(std::move(street));
    }
    for (auto& [land, line] : features.land) {
        land.outline = flat(line);
        read.map.land.push_back(std::move(land));
    }
    for (std::size_t i = 0; i < features.lots.size(); ++i) {
        LotOutline& lot = read.map.lots[i];
        lot.outline = flat(features.lots[i].second);
        lot.front = features.fronts[i].value_or(front_of(lot.outline, read.map.streets));
    }
    read.lots = std::move(features.lot_marks);
    read.land = std::move(features.land_marks);
}

} // namespace

void read_degrees(Reader& root, const PriceBook& book, MapRead& read) {
    if (root.text("type") != "FeatureCollection") {
        return report_not_one_of(root.spot("type"), {"FeatureCollection"}, root.findings());
    }
    Features features;
    root.must_have("features");
    root.items("features", [&](const Spot& item) {
        Reader feature(*item.value, item.path, root.findings());
        if (item.value->kind == Value::Kind::object) read_feature(feature, book, read, features);
    });
    lay_flat(std::move(features), read);
}

} // namespace quoin
