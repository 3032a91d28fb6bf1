// What the parts of the site map's reader share.
#pragma once

#include <vector>

#include <quoin/pricebook/price_book.hpp>
#include <quoin/pricebook/site_map.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {

/// A map as it is read, and where its outlines stand in the file.
struct MapRead {
    SiteMap map;
    std::vector<Mark> lots; ///< one for each of the map's
    std::vector<Mark> land; ///< likewise
    Mark whole;
};

/// A figure in feet as hundredths; 0 with a problem where it is below zero, or no figure.
std::int64_t feet(Reader& item, std::string_view key);
/// A problem where a street's line, in which nothing else is wrong, goes nowhere.
void hold_to_line(Reader& item, std::string_view key, std::size_t places);
/// The lot of the book that a map's lot names; a second outline of one is a problem.
std::optional<Index<Lot>> lot_named(Reader& item, const PriceBook& book, const SiteMap& so_far);

/// In feet: "quoin/map/1".
void read_feet(Reader& root, const PriceBook& book, MapRead& read);
/// In degrees: a FeatureCollection of GeoJSON (RFC 7946).
void read_degrees(Reader& root, const PriceBook& book, MapRead& read);

/// Precondition: nothing was found wrong so far.
void check_site_map(const MapRead& read, const PriceBook& book,
                    const PerItem<Plan, Footprint>& footprints, Findings& findings);

} // namespace quoin
