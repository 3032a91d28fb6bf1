// Degrees of longitude and latitude laid flat about a place, in hundredths of a foot.
#pragma once

#include <quoin/pricebook/drawing.hpp>

namespace quoin {

/// A place on the earth, in billionths of a degree.
struct Position {
    std::int64_t longitude = 0;
    std::int64_t latitude = 0;

    friend bool operator==(const Position&, const Position&) = default;
};

/// What a degree measures at a latitude, in hundred-thousandths of a foot.
struct Degree {
    std::int64_t of_longitude = 0;
    std::int64_t of_latitude = 0;
};

/// On the ellipsoid of WGS 84 (NGA.STND.0036: semi-major axis 6 378 137 m, inverse flattening
/// 298.257 223 563) by its radii of curvature: in the meridian a(1-e²)/(1-e² sin²φ)^(3/2), in the
/// prime vertical a/(1-e² sin²φ)^(1/2) (J. P. Snyder, Map Projections: A Working Manual, U.S.
/// Geological Survey Professional Paper 1395, p. 24 and 25). A foot is 0.3048 m. `latitude` in
/// billionths of a degree.
[[nodiscard]] Degree degree_at(std::int64_t latitude);

/// Where a position is to the right and above of the middle, north at the top.
[[nodiscard]] Point laid_flat(const Position& position, const Position& middle,
                              const Degree& degree);

} // namespace quoin
