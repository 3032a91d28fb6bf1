// Only: where an option can be had: the limits that a price book sets on it.
//
// A limit is a member of Only and an entry of the table in src/pricebook/only.cpp, which reads it,
// holds it to a home and says why it bars. Nothing else knows one limit from another.
#pragma once

#include <string>
#include <vector>

#include <quoin/pricebook/lot.hpp>
#include <quoin/text/why_not.hpp>

namespace quoin {

struct Elevation;
struct PriceBook;

/// An empty list sets no limit.
struct Only {
    std::vector<Index<Plan>> plans; ///< not in the table: it is told as the lack of a price is
    std::vector<std::string> elevations;
    std::vector<Index<Lot>> lots;
    std::vector<Grade> grades;
    std::vector<Measure> lot_at_least;
};

/// In order of precedence.
enum class Limit { elevations, lots, grades, lot_at_least };

/// What a home is held to limits by.
struct Where {
    Index<Plan> plan;
    Index<Elevation> elevation;
    Index<Lot> lot;
};

/// A limit that a home does not keep to.
struct Unkept {
    Limit limit = Limit::elevations;
    std::string detail; ///< lot_at_least: the first measure that is too small

    friend bool operator==(const Unkept&, const Unkept&) = default;
};

/// All that a home does not keep to, in order of precedence.
[[nodiscard]] std::vector<Unkept> unkept(const PriceBook& book, const Only& only,
                                         const Where& where);

/// Why an option cannot be had there.
[[nodiscard]] WhyNot why_not(const PriceBook& book, const Only& only, const Unkept& unkept);

} // namespace quoin
