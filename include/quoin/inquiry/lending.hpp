// Lending: everything a home can be bought with, read from any number of files.
#pragma once

#include <string>
#include <vector>

#include <quoin/lending/place.hpp>
#include <quoin/lending/program.hpp>
#include <quoin/lending/rate_sheet.hpp>
#include <quoin/text/ids.hpp>

namespace quoin {

struct Document;
class Findings;

/// The rate sheet that is asked for: by its id or, where that is empty, the newest of a day.
struct SheetAsked {
    std::string id;
    Date day;
};

/// Of sheets, or of their heads: the one asked for, the first where several answer; nullptr where
/// none does. The newest of a day is dated on it or before.
template <class Sheet>
[[nodiscard]] const Sheet* chosen_sheet(const std::vector<Sheet>& sheets, const SheetAsked& asked) {
    if (!asked.id.empty()) {
        const auto index = index_of(sheets, asked.id);
        return index ? &at(sheets, *index) : nullptr;
    }
    const Sheet* newest = nullptr;
    for (const Sheet& sheet : sheets) {
        if (sheet.date <= asked.day && (newest == nullptr || newest->date < sheet.date)) {
            newest = &sheet;
        }
    }
    return newest;
}

struct Lending {
    std::vector<LoanProgram> programs;
    std::vector<RateSheet> sheets;
    std::vector<Place> places;

    [[nodiscard]] const RateSheet* sheet(const SheetAsked& asked) const {
        return chosen_sheet(sheets, asked);
    }
    /// The newest sheet dated on or before a day, or nullptr.
    [[nodiscard]] const RateSheet* newest_sheet(Date day) const { return sheet({{}, day}); }
};

/// Reads any number of program, rate-sheet and place files, told apart by their "format", and
/// checks what only two of them together show: the program whose rules another takes over, the
/// margin and caps of adjustable rates.
[[nodiscard]] Lending read_lending(const std::vector<Document>& documents, Findings& findings);

} // namespace quoin
