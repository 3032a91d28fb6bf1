// The fields of what the answers share: heading, terms, a month, a scenario, refusals.
#pragma once

#include "read_fields.hpp"
#include <quoin/answers/adds.hpp>
#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>

namespace quoin {

// Compiled once, for each visitor, in shared_fields.cpp.
template <class V, Of<Heading> A>
void fields(V& v, A& heading);
template <class V, Of<ScenarioTerms> A>
void fields(V& v, A& terms);
template <class V, Of<Monthly> A>
void fields(V& v, A& monthly);
template <class V, Of<Refusal> A>
void fields(V& v, A& refusal);
template <class V, Of<Caution> A>
void fields(V& v, A& caution);
template <class V, Of<ScenarioAnswer> A>
void fields(V& v, A& scenario);

inline constexpr std::string_view difference_name = "Difference";
/// What a change comes to: a month and cash, or why the loan is refused.
template <class V, Of<Added> A>
void difference(V& v, A& added) {
    v.when(!added.available(), [&] { v("refusals", added.refusals); });
    v.when(added.available(), [&] {
        v("per_month", added.per_month);
        v("cash_needed", added.cash);
        v("cash_to_close", added.to_close);
    });
}

} // namespace quoin
