// Working out the contrast of a color with white, in whole millionths.
#include "contrast.hpp"

#include <charconv>
#include <cstdint>

#include <quoin/exact/rounding.hpp>

namespace quoin {
namespace {

constexpr std::int64_t one = 1'000'000;

/// The greatest number whose fifth power is within the given one; both below `one`, in millionths
/// and in their fifth power.
std::int64_t fifth_root(Int128 power) {
    std::int64_t low = 0;
    std::int64_t high = one;
    while (low < high) {
        const std::int64_t middle = (low + high + 1) / 2;
        const Int128 square = Int128{middle} * middle;
        if (square * square * middle <= power) {
            low = middle;
        } else {
            high = middle - 1;
        }
    }
    return low;
}

/// A channel of 0 to 255 as light: (c + 0.055) / 1.055 to the power of 2.4, or c / 12.92 where that
/// is very dark. Source: relative luminance, Web Content Accessibility Guidelines 2.2.
std::int64_t light_of(std::int64_t channel) {
    if (channel <= 10) return channel * one * 100 / (255 * 1292);
    const std::int64_t base = (channel * 200 + 2805) * one / 53805;
    const Int128 square = Int128{base} * base;
    const Int128 up_to_five = square * one * one * one;
    return static_cast<std::int64_t>(square * fifth_root(up_to_five) / one / one);
}

std::int64_t channel_of(std::string_view color, std::size_t place) {
    std::int64_t value = 0;
    const char* begin = color.data() + 1 + 2 * place;
    std::from_chars(begin, begin + 2, value, 16);
    return value;
}

} // namespace

bool is_readable_on_white(std::string_view color) {
    const std::int64_t luminance =
        (light_of(channel_of(color, 0)) * 2126 + light_of(channel_of(color, 1)) * 7152 +
         light_of(channel_of(color, 2)) * 722) /
        10000;
    // (1 + 0.05) / (luminance + 0.05) >= 4.5
    return 2 * one + one / 10 >= 9 * (luminance + one / 20);
}

} // namespace quoin
