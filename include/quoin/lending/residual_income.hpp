// ResidualIncome: what a program wants a household to have left each month for living, after taxes,
// debts and all that the home takes (38 CFR 36.4340(e) for VA loans).
//
// A guide of the published underwriting rules, not an approval.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/lending/dated.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

/// The regions of the guide. Which states are in which is in the program's file and in the schema
/// of a place.
enum class Region { northeast, midwest, south, west };
template <>
inline constexpr auto codes<Region> = coded<Region>({{Region::northeast, "northeast"},
                                                     {Region::midwest, "midwest"},
                                                     {Region::south, "south"},
                                                     {Region::west, "west"}});
inline constexpr std::size_t region_count = codes<Region>.size();

struct ResidualIncome : Dated {
    /// The guide for loans up to an amount, dollars a month.
    struct Guide {
        std::optional<Money> loan_up_to;                         ///< nothing: any larger loan
        std::array<std::vector<Money>, region_count> by_persons; ///< of one person, of two, ...
        Money each_further;                                      ///< for persons beyond the list

        [[nodiscard]] Money needed(Region region, int persons) const;
    };

    std::vector<Guide> guides;    ///< by rising loan
    int most_persons = 0;         ///< further persons add nothing
    Money upkeep_per_square_foot; ///< maintenance and utilities, a month, of the living area

    /// What must be left a month; `loan` with what is financed on top. Precondition: persons > 0.
    [[nodiscard]] Money needed(Region region, int persons, Money loan) const;
    /// With whatever loan that is no smaller.
    [[nodiscard]] Money least_needed(Region region, int persons, Money loan = {}) const;
};

} // namespace quoin
