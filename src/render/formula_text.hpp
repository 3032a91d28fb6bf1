// A formula in words for people, and as a spreadsheet writes it.
#pragma once

#include <functional>
#include <string>

#include <quoin/answers/recheck.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// "base loan × upfront premium ÷ 100, to the cent". `name` gives a figure's name for its id.
[[nodiscard]] std::string words(const Formula& formula, FigureUnit unit,
                                const std::function<std::string(const std::string&)>& name,
                                const Catalogue& say);

/// Where the schedule stands in a workbook: row of month 0, and its last row.
struct ScheduleRows {
    int first = 0;
    int last = 0;
    std::string sheet; ///< its name; empty for cells of its own

    [[nodiscard]] int of(int month) const { return first + month; }
};
inline constexpr char month_letter = 'A';

/// "ROUND(base_loan*upfront_percent/100,2)": figures by their names, the schedule by its cells.
[[nodiscard]] std::string spreadsheet_text(const Formula& formula, const ScheduleRows& rows);

} // namespace quoin
