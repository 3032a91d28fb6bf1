// Lots: where a home can stand, what that costs, and which plans fit.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <quoin/exact/decimal.hpp>
#include <quoin/exact/index.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

struct Plan;

enum class LotStatus { free, held, sold };
template <>
inline constexpr auto codes<LotStatus> = coded<LotStatus>({{LotStatus::free, "free"},
                                                           {LotStatus::held, "held"},
                                                           {LotStatus::sold, "sold"}});

/// How the ground falls: level; to basement windows; to a door out of the basement.
enum class Grade { level, garden, walk_out };
template <>
inline constexpr auto codes<Grade> = coded<Grade>({{Grade::level, "level"},
                                                   {Grade::garden, "garden"},
                                                   {Grade::walk_out, "walk_out", "walk-out"}});

/// A named size of a plan or lot, such as rear_setback_ft 31.
struct Measure {
    std::string name;
    Decimal value;
};

struct Lot {
    std::string id;
    Money premium;
    LotStatus status = LotStatus::free;
    Grade grade = Grade::level;
    std::vector<Index<Plan>> plans; ///< that fit; empty: all
    bool flood_zone = false;
    std::vector<Measure> measures;
    std::string note;
    std::string office_note; ///< for the desk: no buyer sees it
};

template <>
inline constexpr bool only_by_index<Lot> = true;

/// A measure by name, or nullptr.
[[nodiscard]] const Decimal* find_measure(const std::vector<Measure>& measures,
                                          std::string_view name);

} // namespace quoin
