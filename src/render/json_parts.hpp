// Parts of answers as JSON, shared by the questions: the one wire form.
//
// Money is text with two decimals ("1580.17"), percents and rates are text as exact decimals, dates
// are "2026-11-24".
#pragma once

#include <nlohmann/json.hpp>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>

namespace quoin {

using Json = nlohmann::ordered_json;

[[nodiscard]] Json json_of(const Heading& heading);
[[nodiscard]] Json json_of(const ScenarioTerms& terms);
[[nodiscard]] Json json_of(const Monthly& monthly);
[[nodiscard]] Json json_of(const ScenarioAnswer& answer);
[[nodiscard]] Json json_of(const std::vector<Refusal>& refusals);
[[nodiscard]] Json json_of(const Work& work);
/// What a change comes to, as members of `json`: a month and cash, or why the loan is refused.
void add_difference(const Added& added, Json& json);
[[nodiscard]] Json date_json(const std::optional<Date>& date); ///< null where there is none
/// As it is shown, see disclosed(); null where none was found.
[[nodiscard]] Json apr_json(const std::optional<Rate>& apr);
[[nodiscard]] Json cautions_json(const std::vector<std::string>& cautions);

/// Two-space indent and a line end: how every answer is written.
[[nodiscard]] std::string written(const Json& json);

} // namespace quoin
