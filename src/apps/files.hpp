// Files: reading whole texts, with a limit, and naming what is near a missing one.
#pragma once

#include <filesystem>
#include <istream>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/text/findings.hpp>
#include <quoin/text/source.hpp>

namespace quoin::apps {

/// The largest file that is read: far above any price book, far below the machine's memory.
inline constexpr std::size_t largest_file = 16U * 1024 * 1024;

/// A file's text under the name it was asked for, or nullptr with a problem recorded. `what` says
/// what it was to be.
[[nodiscard]] std::shared_ptr<const Source> read_file(const std::filesystem::path& path,
                                                      FileMeant what, Findings& findings);

/// A regular file of a size that is read, to look at its beginning; else nullptr.
[[nodiscard]] std::unique_ptr<std::istream> open_file(const std::filesystem::path& path);

/// The JSON files of a folder by name; empty where there is none.
[[nodiscard]] std::vector<std::filesystem::path> json_files(const std::filesystem::path& folder);

/// Where data that came with the program is: beside the installed program, else in the source tree
/// it was built from. `name` is "rates", "examples" or "schemas".
[[nodiscard]] std::filesystem::path data_folder(std::string_view name);

/// Where the whole program is (whole.hpp): in libexec/ beside this program, or beside its bin/.
/// Empty where the system does not tell where this program is.
[[nodiscard]] std::filesystem::path whole_program();

/// Where lending data is: `asked` if given, else $QUOIN_RATES, else what came with the program.
[[nodiscard]] std::filesystem::path rates_folder(const std::string& asked);

} // namespace quoin::apps
