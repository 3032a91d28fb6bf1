// Figures of lending data that cannot be below zero: said to be so where they stand.
#pragma once

#include <algorithm>
#include <string_view>

#include <quoin/lending/band_table.hpp>
#include <quoin/lending/reading.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {

/// Records a problem where the figure of a member is below zero; gives the figure back.
template <class Figure>
Figure not_negative(Reader& item, std::string_view key, Figure figure) {
    if (figure < Figure{}) item.report(problems::figure_below_zero(item.spot(key)));
    return figure;
}

template <class Figure>
std::optional<Figure> not_negative(Reader& item, std::string_view key,
                                   std::optional<Figure> figure) {
    if (figure) static_cast<void>(not_negative(item, key, *figure));
    return figure;
}

/// A table of what is only ever added: fees, factors, premiums.
inline BandTable read_table_not_negative(Reader& item) {
    BandTable table = read_band_table(item);
    const bool below = std::any_of(table.values.begin(), table.values.end(),
                                   [](Decimal value) { return value < Decimal{}; });
    if (below) item.report(problems::values_below_zero(item.here()));
    return table;
}

} // namespace quoin
