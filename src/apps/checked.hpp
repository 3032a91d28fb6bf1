// A file of any kind, checked as far as it goes, with what it names.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/inquiry/desk.hpp>
#include <quoin/lending/editions.hpp>
#include <quoin/text/findings.hpp>

namespace quoin::apps {

/// A table that ends soon after the day asked about, or has ended, with nothing to follow it.
struct EndingTable {
    std::string of; ///< id of the program, sheet or place
    Ending ending;
};

/// One file of any kind, checked as far as it goes; an inquiry together with what it names.
struct Checked {
    std::string file;
    FileKind kind = FileKind::unknown;
    Findings findings;
    std::vector<EndingTable> endings = {}; ///< of a sound file, within ending_days
};
inline constexpr int ending_days = 90;
/// `day`: that tables end after; nothing: an inquiry's own, else today.
[[nodiscard]] Checked check_file(const std::string& file, const std::string& rates,
                                 std::optional<Date> day);

} // namespace quoin::apps
