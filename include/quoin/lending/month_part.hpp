// MonthPart: what the month's figure is made of, a row for each part.
//
// All else goes by the rows: a further premium or due is read from a place's file, is put into the
// month, the escrow account, every answer, the recheck and the page by its enumerator and its row.
#pragma once

#include <algorithm>
#include <array>
#include <string_view>

#include <quoin/exact/amounts.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

/// In the order in which the parts are told.
enum class MonthPart {
    principal_and_interest,
    mortgage_insurance,
    property_tax,
    homeowners_insurance,
    flood_insurance,
    wind_insurance,
    association_dues,
    district_charges,
};

/// Where the figure of a part comes from.
enum class PartSource {
    loan,      ///< its schedule, and the insurance on it
    tax,       ///< by the year, in the tax bills; at first perhaps on the land alone
    insurance, ///< a premium by the year: prepaid at closing, renewed out of the escrow account
    dues,      ///< by the month, to whom they are due
};

struct MonthPartRow {
    MonthPart part;
    std::string_view code; ///< in answers
    PartSource from;
    std::string_view stem; ///< of its figures in a recheck; of insurance and dues, the member of a
                           ///< place's file
};

inline constexpr auto month_parts = std::to_array<MonthPartRow>({
    {MonthPart::principal_and_interest, "principal_and_interest", PartSource::loan,
     "principal_and_interest"},
    {MonthPart::mortgage_insurance, "mortgage_insurance", PartSource::loan, "mortgage_insurance"},
    {MonthPart::property_tax, "property_tax", PartSource::tax, "tax"},
    {MonthPart::homeowners_insurance, "homeowners_insurance", PartSource::insurance, "homeowner"},
    {MonthPart::flood_insurance, "flood_insurance", PartSource::insurance, "flood"},
    {MonthPart::wind_insurance, "wind_insurance", PartSource::insurance, "wind"},
    {MonthPart::association_dues, "association_dues", PartSource::dues, "dues"},
    {MonthPart::district_charges, "district_charges", PartSource::tax, "district"},
});

[[nodiscard]] constexpr const MonthPartRow& row_of(MonthPart part) {
    return month_parts[static_cast<std::size_t>(part)];
}
static_assert(std::all_of(month_parts.begin(), month_parts.end(),
                          [](const MonthPartRow& row) { return &row_of(row.part) == &row; }),
              "the rows stand in the order of the parts");

consteval std::array<Code<MonthPart>, month_parts.size()> codes_of_month_parts() {
    std::array<Code<MonthPart>, month_parts.size()> list{};
    std::transform(month_parts.begin(), month_parts.end(), list.begin(),
                   [](const MonthPartRow& row) {
                       return Code<MonthPart>{row.part, row.code, row.code};
                   });
    return list;
}
template <>
inline constexpr auto codes<MonthPart> = codes_of_month_parts();

/// The rows of the parts of a source, in order.
template <PartSource source>
inline constexpr auto parts_from = [] {
    constexpr auto is_of = [](const MonthPartRow& row) { return row.from == source; };
    constexpr auto count = std::count_if(month_parts.begin(), month_parts.end(), is_of);
    std::array<MonthPartRow, static_cast<std::size_t>(count)> rows{};
    std::copy_if(month_parts.begin(), month_parts.end(), rows.begin(), is_of);
    return rows;
}();

using PartAmounts = Amounts<MonthPart, month_parts.size()>;

} // namespace quoin
