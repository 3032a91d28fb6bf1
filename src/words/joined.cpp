// Naming several things in a row.
#include <quoin/words/joined.hpp>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "reasons.hpp"

namespace quoin {

std::string joined(const std::vector<std::string>& names, std::string_view between) {
    return fmt::format("{}", fmt::join(names, between));
}

std::string joined(const std::vector<std::string>& names, Joint joint, const Catalogue& say) {
    if (names.size() < 2) return joined(names);
    const ReasonWords& of = say.reasons;
    const std::string row = joined({names.begin(), names.end() - 1});
    return (joint == Joint::both ? of.contradiction.both : of.either)(row, names.back());
}

} // namespace quoin
