// A workbook as the bytes of an .xlsx file.
#pragma once

#include <string>

#include <quoin/render/workbook.hpp>

namespace quoin::apps {

/// Throws Refused where the system leaves no room for it.
[[nodiscard]] std::string xlsx_bytes(const Workbook& workbook);

} // namespace quoin::apps
