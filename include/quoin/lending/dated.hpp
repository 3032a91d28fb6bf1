// Dated: what stands behind a rule of a published table, and the days on which it is in force.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/exact/date.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {

/// What stands behind a rule.
enum class Status { published, from_memory, common_practice, sample };
[[nodiscard]] std::string_view name_of(Status status);

struct Dated {
    std::string source; ///< the publication, or why there is none
    Status status = Status::sample;
    std::optional<Date> effective; ///< first day; nothing: ever since
    std::optional<Date> until;     ///< first day after; nothing: for good

    [[nodiscard]] bool in_force(Date day) const {
        return (!effective || *effective <= day) && (!until || day < *until);
    }
    /// Whether both are in force on some day.
    [[nodiscard]] bool meets(const Dated& other) const;
};

/// Reads "status", "source", "effective" and "until"; the days may be missing.
void read_dated(Reader& item, Dated& rule);

/// The one of a list in force, or nullptr where none is on that day.
template <class Rule>
[[nodiscard]] const Rule* in_force_on(const std::vector<Rule>& rules, Date day) {
    for (const Rule& rule : rules) {
        if (rule.in_force(day)) return &rule;
    }
    return nullptr;
}

} // namespace quoin
