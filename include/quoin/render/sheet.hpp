// A sheet as one HTML page to print and hand over: no script, no other file, no address in it.
#pragma once

#include <string>

#include <quoin/answers/sheet.hpp>

namespace quoin {

[[nodiscard]] std::string html_of(const SheetAnswer& answer);

} // namespace quoin
