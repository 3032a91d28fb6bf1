// A loan program as it goes home: with the rules that it takes over, and its terms in play.
#pragma once

#include <set>

#include <quoin/text/value.hpp>

namespace quoin::apps {

/// `rules_of` is the program whose rules stand where this one gives none, or nullptr: they are
/// written into it, so that no other program has to go along.
[[nodiscard]] Value program_in_play(Value program, const Value* rules_of,
                                    const std::set<int>& terms_months);

} // namespace quoin::apps
