// Files: the one door to the disk for all that is read. Whole texts, with a limit; what is near a
// missing one; what a folder holds. (In a browser, browser/held_files.cpp stands behind it.)
#pragma once

#include <cstdint>
#include <filesystem>
#include <istream>
#include <memory>
#include <optional>
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

/// Those of a folder and of the folders below it, two deep, by name; the first 2,000 that are
/// found. Links to folders are not followed.
[[nodiscard]] std::vector<std::filesystem::path>
json_files_below(const std::filesystem::path& folder);

[[nodiscard]] bool is_folder(const std::filesystem::path& path);

/// What is known of a file before it is read.
struct FileLook {
    bool regular = false;
    std::uintmax_t size = 0; ///< of a regular one; 0 where the system does not tell
};
/// Nothing where there is none.
[[nodiscard]] std::optional<FileLook> look_at_file(const std::filesystem::path& path);

/// Whether a file lies in the folder or below it once every link is followed.
[[nodiscard]] bool lies_below(const std::filesystem::path& file,
                              const std::filesystem::path& folder);

/// Where data that came with the program is: beside the installed program, else in the source tree
/// it was built from. `name` is "rates", "examples" or "schemas".
[[nodiscard]] std::filesystem::path data_folder(std::string_view name);

/// Where the whole program is (whole.hpp): in libexec/ beside this program, or beside its bin/.
/// Empty where the system does not tell where this program is.
[[nodiscard]] std::filesystem::path whole_program();

/// Where lending data is: `asked` if given, else $QUOIN_RATES, else what came with the program.
[[nodiscard]] std::filesystem::path rates_folder(const std::string& asked);

} // namespace quoin::apps
