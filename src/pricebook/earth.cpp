// Radii of the earth in whole numbers: no figure here is binary floating point.
#include "earth.hpp"

#include "ground.hpp"

namespace quoin {
namespace {

/// Fractions are counted in this: 15 decimals.
constexpr Int128 whole = 1'000'000'000'000'000;
constexpr Int128 pi = 3'141'592'653'589'793;
constexpr Int128 billionths = 1'000'000'000;

Int128 product(Int128 a, Int128 b) { return a * b / whole; }

/// x^n / n! - x^(n+2) / (n+2)! + ..., which is the cosine from n = 0 and the sine from n = 1.
Int128 alternating(Int128 x, int n) {
    Int128 term = n == 0 ? whole : x;
    Int128 sum = 0;
    while (term != 0) {
        sum += term;
        term = -product(product(term, x), x) / ((n + 1) * (n + 2));
        n += 2;
    }
    return sum;
}

Int128 root(Int128 fraction) { return root_of(fraction * whole); }

} // namespace

Degree degree_at(std::int64_t latitude) {
    constexpr Int128 flattening = 298'257'223'563; // its inverse, in billionths
    constexpr Int128 eccentricity =
        whole * (2 * flattening - billionths) / flattening * billionths / flattening; // squared
    constexpr Int128 axis = Int128{6'378'137} * 10'000 * 100'000 / 3048; // as a degree is measured
    const Int128 angle = Int128{latitude} * pi / 180 / billionths;
    const Int128 sine = alternating(angle, 1);
    const Int128 w = root(whole - product(eccentricity, product(sine, sine)));
    const Int128 vertical = axis * whole / w;
    const Int128 meridian = product(axis, whole - eccentricity) * whole / w * whole / w * whole / w;
    return {static_cast<std::int64_t>(product(product(vertical, alternating(angle, 0)), pi) / 180),
            static_cast<std::int64_t>(product(meridian, pi) / 180)};
}

Point laid_flat(const Position& position, const Position& middle, const Degree& degree) {
    const auto flat = [](std::int64_t billionths_of, std::int64_t measure) {
        return static_cast<std::int64_t>(divide_rounded<Int128>(
            Int128{billionths_of} * measure, billionths * 1000, Rounding::half_away));
    };
    return {flat(position.longitude - middle.longitude, degree.of_longitude),
            flat(position.latitude - middle.latitude, degree.of_latitude)};
}

} // namespace quoin
