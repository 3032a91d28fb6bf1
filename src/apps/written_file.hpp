// Writing a file: its owner's alone, whole or not at all, and never over what somebody else wrote.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace quoin::apps {

/// Throws Refused where the name does not end in one of `endings`. `option` is how it was given.
void check_ending(const std::string& option, const std::string& name,
                  const std::vector<std::string>& endings);

/// What stands there already is replaced where it bears quoin's mark, or where `force` says so.
/// Throws Refused.
void write_file(const std::filesystem::path& path, std::string_view text, bool force);

/// Whether these bytes are a sheet or a workbook that quoin wrote.
[[nodiscard]] bool bears_mark(std::string_view bytes);

} // namespace quoin::apps
