// What of a buyer's desk may go home with the buyer: every member of every file that may, by name.
//
// Whatever is not named here stays. The table is apart from the readers on purpose: a member that
// they learn stays at the desk until somebody has thought about it, and a test asks for that
// (tests/apps/what_goes.cpp).
#pragma once

#include <string_view>
#include <vector>

#include <quoin/inquiry/desk.hpp>

namespace quoin::apps {

/// A member that may go. With members of its own: those of its object, or of each object of its
/// list. Without: a plain value, a text in each language, or a list of such.
struct Member {
    std::string_view name; ///< "*": whatever its name but "comment"
    std::vector<Member> members = {};
};
using Members = std::vector<Member>;

/// Of a file of this kind; none may go of a kind that no buyer's desk has.
[[nodiscard]] const Members& may_go(FileKind kind);
/// Of the plans in a price book that are not the buyer's.
[[nodiscard]] const Members& may_go_of_other_plans();
/// Of a row in a list of lots, or of a lot in the price book.
[[nodiscard]] const Members& may_go_of_lots();
/// Of a map in degrees (GeoJSON).
[[nodiscard]] const Members& may_go_of_map_in_degrees();

} // namespace quoin::apps
