// Workbook: sheets of cells with live formulas, as plain values; apps writes the file.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include <quoin/answers/recheck.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

enum class CellLook { text, title, heading, note, money, percent, number, date };

struct WorkbookCell {
    int row = 0; ///< from 0
    int column = 0;
    CellLook look = CellLook::text;
    std::string text;    ///< shown as it is; empty where the cell has a value
    std::string formula; ///< without "="; empty where the value is given
    Decimal value;       ///< what the formula comes to; of a date, days since 30 December 1899
};

struct WorkbookSheet {
    std::string name;
    std::vector<int> widths; ///< of the columns, in characters
    int frozen_rows = 0;
    std::vector<WorkbookCell> cells;
};

struct Workbook {
    std::vector<WorkbookSheet> sheets;
    std::vector<std::pair<std::string, std::string>> names; ///< of cells: "loan", "loan!$B$9"
};

/// Sheets home, loan, cash and schedule. Precondition: the scenario can be had.
[[nodiscard]] Workbook workbook_of(const RecheckAnswer& answer,
                                   const Catalogue& say = catalogue_in(Language::english));

} // namespace quoin
