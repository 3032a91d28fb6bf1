// SiteMap: where the lots of a community lie, their outlines, the streets between them.
//
// Lengths are whole hundredths of a foot; x runs to the right of the sheet, y to its top. A map in
// degrees of longitude and latitude (GeoJSON, RFC 7946) is laid flat about its middle as it is
// read, north at the top. Outlines are kept counterclockwise.
//
//   SiteMap map = read_site_map(document, book, footprints, findings);
//   const LotView view(map.lots.front());
//   view.house(footprints[plan])   ->  where it stands, or nothing where it does not fit
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <quoin/exact/index.hpp>
#include <quoin/pricebook/drawing.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

// How much a map may hold.
namespace caps {
inline constexpr std::size_t map_corners = 500; ///< of a lot, of land, of a street's line
} // namespace caps

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

/// How much ground a plan's house takes, in hundredths of a foot; 0 where nothing tells it.
struct Footprint {
    std::int64_t width = 0;
    std::int64_t depth = 0;
};

/// Of a plan: its measures house_width_ft and house_depth_ft, else what its drawing takes up.
[[nodiscard]] Footprint footprint_of(const Plan& plan, const PlanDrawing* drawing);

/// From one place to another along a line, such as the front of a lot.
struct Interval {
    std::int64_t from = 0;
    std::int64_t to = 0;

    [[nodiscard]] std::int64_t length() const { return to - from; }
    [[nodiscard]] std::int64_t middle() const { return from + length() / 2; }
};

/// A lot as seen from its street: x along the front from its left end, y from the front into the
/// lot, both to a hundredth of a foot.
class LotView {
  public:
    explicit LotView(const LotOutline& lot);

    /// The lot, counterclockwise, its first two corners the front.
    [[nodiscard]] const Outline& outline() const { return outline_; }
    [[nodiscard]] Point on_sheet(const Point& seen) const;
    [[nodiscard]] Outline on_sheet(const Outline& seen) const;

    /// The widest stretch of the lot at a depth; nothing where it is not so deep.
    [[nodiscard]] std::optional<Interval> across(std::int64_t depth) const;
    /// A house on the front setback line, parallel to the front and slid along it until it clears
    /// the setbacks: its corners as seen from the street, front left first; nothing where there is
    /// no such place.
    [[nodiscard]] std::optional<Outline> house(const Footprint& footprint) const;
    /// From the back of a house to the rear line, where it is least.
    [[nodiscard]] std::int64_t behind(const Outline& house) const;

  private:
    Outline outline_;
    Point corner_;            ///< on the sheet, of the front's left end
    Point along_;             ///< from there to its right end
    std::int64_t length_ = 0; ///< of the front, in millionths of a foot
    std::int64_t front_setback_ = 0;
    std::int64_t side_setback_ = 0;
    std::int64_t rear_setback_ = 0;
};

/// Where a house of this width and depth stands on a lot: its corners on the sheet, front left
/// first; nothing where it does not fit within the setbacks.
[[nodiscard]] std::optional<Outline> footprint_on(const LotOutline& lot, std::int64_t width,
                                                  std::int64_t depth);

/// Reads a map and holds it to the book: outlines close and do not overlap, widths and yards are
/// the lots' own within 2 %, and a plan stands where the book says that it fits, and nowhere else.
/// Where findings were added, the result must not be used.
[[nodiscard]] SiteMap read_site_map(const Document& document, const PriceBook& book,
                                    const PerItem<Plan, Footprint>& footprints, Findings& findings);

} // namespace quoin
