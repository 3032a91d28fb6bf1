// SiteMap: where the lots of a community lie, their outlines, the streets between them.
//
// Lengths are whole hundredths of a foot; x runs to the east, y to the north. A map in degrees of
// longitude and latitude (GeoJSON, RFC 7946) is laid flat about its middle as it is read.
//
//   SiteMap map = read_site_map(document, book, findings);
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <quoin/exact/index.hpp>
#include <quoin/pricebook/drawing.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

/// A lot's outline. Its front lies on a street; setbacks keep the house off the lines.
struct LotOutline {
    Index<Lot> lot;
    Outline outline;
    std::size_t front = 0;          ///< the side from this corner to the next is the front
    std::int64_t front_setback = 0; ///< hundredths of a foot, as the next two
    std::int64_t side_setback = 0;
    std::int64_t rear_setback = 0;
};

struct Street {
    std::string name;
    std::vector<Point> line;
    std::int64_t width = 0; ///< hundredths of a foot
};

enum class LandKind { meadow, water, woods, drain, easement, road };
template <>
inline constexpr auto codes<LandKind> = coded<LandKind>({{LandKind::meadow, "meadow"},
                                                         {LandKind::water, "water"},
                                                         {LandKind::woods, "woods"},
                                                         {LandKind::drain, "drain"},
                                                         {LandKind::easement, "easement"},
                                                         {LandKind::road, "road"}});

/// Land around the lots, or a part of them that nobody may build on.
struct Land {
    std::string name;
    LandKind kind = LandKind::meadow;
    Outline outline;
};

struct SiteMap {
    std::string file;
    int north = 0; ///< degrees that north lies to the right of the top of the sheet
    std::vector<LotOutline> lots;
    std::vector<Street> streets;
    std::vector<Land> land;
};

/// Where a house of this width and depth stands on a lot: its corners, front left first, as seen
/// from the street; nothing where it does not fit within the setbacks.
[[nodiscard]] std::optional<Outline> footprint_on(const LotOutline& lot, std::int64_t width,
                                                  std::int64_t depth);

/// Reads a map and holds it to the book: outlines close and do not overlap, widths and yards are
/// the lots' own within 2 %, and a plan stands where the book says that it fits, and nowhere else.
/// Where findings were added, the result must not be used.
[[nodiscard]] SiteMap read_site_map(const Document& document, const PriceBook& book,
                                    Findings& findings);

} // namespace quoin
