// Lending: everything a home can be bought with, read from any number of files.
#pragma once

#include <string_view>
#include <vector>

#include <quoin/lending/place.hpp>
#include <quoin/lending/program.hpp>
#include <quoin/lending/rate_sheet.hpp>

namespace quoin {

struct Lending {
    std::vector<LoanProgram> programs;
    std::vector<RateSheet> sheets;
    std::vector<Place> places;

    /// The newest sheet dated on or before a day, or nullptr.
    [[nodiscard]] const RateSheet* newest_sheet(Date day) const;
};

/// Reads any number of program, rate-sheet and place files, told apart by their "format", and
/// checks what only two of them together show: the program whose rules another takes over, the
/// margin and caps of adjustable rates.
[[nodiscard]] Lending read_lending(const std::vector<Document>& documents, Findings& findings);

} // namespace quoin
