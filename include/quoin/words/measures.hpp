// How the measures of a lot or a plan are told: rear_setback_ft is "rear setback", in " ft".
#pragma once

#include <string>
#include <string_view>

#include <quoin/text/codes.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// Measures that have words in every language. A price book may name others; those are told by
/// their own names.
enum class CommonMeasure {
    width,
    depth,
    area,
    front_setback,
    rear_setback,
    side_setback,
    usable_yard,
    house_width,
};
/// As a price book has them, before the unit.
template <>
inline constexpr auto
    codes<CommonMeasure> = coded<CommonMeasure>({{CommonMeasure::width, "width"},
                                                 {CommonMeasure::depth, "depth"},
                                                 {CommonMeasure::area, "area"},
                                                 {CommonMeasure::front_setback, "front_setback"},
                                                 {CommonMeasure::rear_setback, "rear_setback"},
                                                 {CommonMeasure::side_setback, "side_setback"},
                                                 {CommonMeasure::usable_yard, "usable_yard"},
                                                 {CommonMeasure::house_width, "house_width"}});

struct SaidMeasure {
    std::string name;
    std::string unit; ///< with the blank before it; empty where the name ends in no known unit
};

/// What a measure is called; the unit is the end of its name.
[[nodiscard]] SaidMeasure said_measure(std::string_view name, const Catalogue& say);

} // namespace quoin
