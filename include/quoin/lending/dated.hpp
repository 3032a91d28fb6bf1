// Dated: what stands behind a rule of a published table, and the days on which it is in force.
#pragma once

#include <optional>
#include <string>

#include <quoin/exact/date.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

/// What stands behind a rule.
enum class Status { published, from_memory, common_practice, sample };
template <>
inline constexpr auto
    codes<Status> = coded<Status>({{Status::published, "published"},
                                   {Status::from_memory, "from_memory", "from memory"},
                                   {Status::common_practice, "common_practice", "common practice"},
                                   {Status::sample, "sample"}});

/// What follows an edition after its end, where no later one has begun.
enum class After {
    unknown,   ///< nobody knows: what depends on it is refused
    continues, ///< it is used on, and that is told
    ends,      ///< the rule is no more
};
template <>
inline constexpr auto codes<After> = coded<After>({{After::unknown, "unknown"},
                                                   {After::continues, "continues"},
                                                   {After::ends, "ends"}});

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

} // namespace quoin
