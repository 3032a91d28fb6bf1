// The two sides of a sheet: the home, then its loans.
#pragma once

#include <string>

#include <quoin/answers/sheet.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// Whose home, what it comes to, what is in it, how it lies.
[[nodiscard]] std::string sheet_of_home(const SheetAnswer& answer, const Catalogue& say);

/// The loans beside each other, the dates, what has to be known, and who gave it.
[[nodiscard]] std::string sheet_of_loans(const SheetAnswer& answer, const Catalogue& say);

} // namespace quoin
