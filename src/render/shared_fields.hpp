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
void fields(auto& v, Of<Heading> auto& heading);
void fields(auto& v, Of<ScenarioTerms> auto& terms);
void fields(auto& v, Of<Monthly> auto& monthly);
void fields(auto& v, Of<Refusal> auto& refusal);
void fields(auto& v, Of<Caution> auto& caution);
void fields(auto& v, Of<ScenarioAnswer> auto& scenario);

inline constexpr std::string_view difference_name = "Difference";
/// What a change comes to: a month and cash, or why the loan is refused.
void difference(auto& v, Of<Added> auto& added) {
    v.when(!added.available(), [&] { v("refusals", added.refusals); });
    v.when(added.available(), [&] {
        v("per_month", added.per_month);
        v("cash_needed", added.cash);
        v("cash_to_close", added.to_close);
    });
}

} // namespace quoin
