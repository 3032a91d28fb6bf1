// Desk: the loaded price book and lending data, immutable, shared by every caller and thread.
#pragma once

#include <string_view>
#include <vector>

#include <quoin/lending/place.hpp>
#include <quoin/lending/program.hpp>
#include <quoin/lending/rate_sheet.hpp>
#include <quoin/pricebook/price_book.hpp>

namespace quoin {

/// What a home can be bought with.
struct Lending {
    std::vector<LoanProgram> programs;
    std::vector<RateSheet> sheets;
    std::vector<Place> places;

    /// The newest sheet dated on or before a day, or nullptr.
    [[nodiscard]] const RateSheet* newest_sheet(Date day) const;
};

struct Desk {
    PriceBook book;
    Lending lending;
};

/// Reads any number of program, rate-sheet and place files, told apart by their "format".
[[nodiscard]] Lending read_lending(const std::vector<Document>& documents, Findings& findings);

/// The kinds of files that people write.
enum class FileKind { unknown, price_book, inquiry, program, rate_sheet, place, apr_problem };
[[nodiscard]] FileKind kind_of(const Document& document);

} // namespace quoin
