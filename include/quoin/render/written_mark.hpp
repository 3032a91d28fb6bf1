// What quoin puts into the files that it writes, so that it knows them again: such a file may be
// replaced, any other is somebody's.
#pragma once

#include <string_view>

namespace quoin {

/// In a sheet, among its head.
inline constexpr std::string_view sheet_mark = "<meta name=\"generator\" content=\"quoin\">";

/// In a workbook, the comment among its properties.
inline constexpr std::string_view workbook_mark = "Written by quoin";

} // namespace quoin
