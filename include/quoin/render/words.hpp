// The words that renderings share: parts of a month, refusals, reasons of jumps.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>

namespace quoin {

[[nodiscard]] std::string words(const Refusal& refusal);
/// "the program's loan limit"
[[nodiscard]] std::string_view words(RuleList list);
/// "the program's loan limit after 31 December 2026 is not in the data"
[[nodiscard]] std::string words(const ListGap& gap);
[[nodiscard]] std::vector<std::string> words_of(const std::vector<ListGap>& gaps);
/// What changed, from which band and value to which.
[[nodiscard]] std::string words(const Jump& jump);
/// The same, led by the LTV before and after where it moved.
[[nodiscard]] std::string words(const Jump& jump, const Added& added);

/// Every jump of a difference, likewise.
[[nodiscard]] std::vector<std::string> jump_words(const Added& added);

/// What money went to: "the temporary buydown"; an upfront fee by what it is in this scenario.
[[nodiscard]] std::string words(CreditUse use, const ScenarioAnswer& scenario);
[[nodiscard]] std::vector<std::string> trades(const Work& work);

/// "30 years", "15 years", "181 months".
[[nodiscard]] std::string term_text(Months term);
/// "6.125 % note rate, APR 6.4 %, 30 years, ..." : what must stand beside a payment.
[[nodiscard]] std::string terms_line(const ScenarioTerms& terms);

/// What of the cash is left for the closing: "$1,729.95 to bring to the closing", or "back at" it.
[[nodiscard]] std::string closing_words(const CashToClose& cash);

/// Title, home, dates: the first lines of every text.
[[nodiscard]] std::string heading_text(const Heading& heading, std::string_view title);

} // namespace quoin
