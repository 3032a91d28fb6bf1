// Dated: what stands behind a rule of a published table, and the days on which it is in force.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <quoin/exact/date.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {

/// What stands behind a rule.
enum class Status { published, from_memory, common_practice, sample };
[[nodiscard]] std::string_view name_of(Status status);

/// What follows an edition after its end, where no later one has begun.
enum class After {
    unknown,   ///< nobody knows: what depends on it is refused
    continues, ///< it is used on, and that is told
    ends,      ///< the rule is no more
};
[[nodiscard]] std::string_view name_of(After after);

struct Dated {
    std::string source; ///< the publication, or why there is none
    Status status = Status::sample;
    std::optional<Date> effective; ///< first day; nothing: ever since
    std::optional<Date> until;     ///< first day after; nothing: for good
    After after = After::unknown;  ///< the end, where there is one

    [[nodiscard]] bool in_force(Date day) const {
        return (!effective || *effective <= day) && (!until || day < *until);
    }
    /// Whether both are in force on some day.
    [[nodiscard]] bool meets(const Dated& other) const;
};

/// Reads "status", "source", "effective", "until" and "after"; all but the first two may be
/// missing.
void read_dated(Reader& item, Dated& rule);

} // namespace quoin
