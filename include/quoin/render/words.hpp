// The words that renderings share: parts of a month, refusals, reasons of jumps, cautions.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>

namespace quoin {

[[nodiscard]] std::string words(const Refusal& refusal);
/// "FHA, 3.5 % down cannot be had: ...", of a scenario by its name.
[[nodiscard]] std::string refused_words(const std::string& scenario, const Refusal& refusal);
/// A line for each reason.
[[nodiscard]] std::string refused_lines(const ScenarioTerms& terms,
                                        const std::vector<Refusal>& refusals);
/// "the program's loan limit"
[[nodiscard]] std::string_view words(RuleList list);
/// "the program's loan limit after 31 December 2026 is not in the data"
[[nodiscard]] std::string words(const ListGap& gap);
[[nodiscard]] std::vector<std::string> words_of(const std::vector<ListGap>& gaps);
/// That a program's last edition of a list is used beyond its end, a sentence.
[[nodiscard]] std::string continued_caution(std::string_view program, const ListGap& gap);
/// Such a sentence for each list of each program, once.
void add_continued_cautions(const std::vector<ScenarioTerms>& terms,
                            std::vector<std::string>& notes);

/// What changed, from which band and value to which.
[[nodiscard]] std::string words(const Jump& jump);
/// The same, led by the LTV before and after where it moved.
[[nodiscard]] std::string words(const Jump& jump, const Added& added);

/// Every jump of a difference, likewise.
[[nodiscard]] std::vector<std::string> jump_words(const Added& added);

/// What money went to: "the temporary buydown"; an upfront fee by what it is in this scenario.
[[nodiscard]] std::string words(CreditUse use, const ScenarioAnswer& scenario);

/// "30 years", "15 years", "181 months".
[[nodiscard]] std::string term_text(Months term);
/// "6.125 % note rate, APR 6.4 %, 30 years, ..." : what must stand beside a payment.
[[nodiscard]] std::string terms_line(const ScenarioTerms& terms);

/// What of the cash is left for the closing: "$1,729.95 to bring to the closing", or "back at" it.
[[nodiscard]] std::string closing_words(const CashToClose& cash);

/// That it is an estimate, and who decides.
[[nodiscard]] std::string estimate_caution(const Heading& heading);
/// What must stand beside every payment and rate, in short sentences.
[[nodiscard]] std::vector<std::string> loan_cautions(const Heading& heading,
                                                     const std::vector<ScenarioTerms>& terms);
/// The terms out of any list of scenarios.
template <class Scenarios>
[[nodiscard]] std::vector<ScenarioTerms> terms_of(const Scenarios& scenarios) {
    std::vector<ScenarioTerms> terms;
    for (const auto& scenario : scenarios) terms.push_back(scenario.terms);
    return terms;
}
/// "deck, can lights".
[[nodiscard]] std::string joined(const std::vector<std::string>& names);

/// For work that needs a permit or a licensed trade.
[[nodiscard]] std::string work_caution();
/// Who may present loan terms: for the agent, once.
[[nodiscard]] std::string agent_caution();

/// Title, home, dates: the first lines of every text.
[[nodiscard]] std::string heading_text(const Heading& heading, std::string_view title);
/// The last lines: assumptions and cautions.
[[nodiscard]] std::string footing_text(const std::vector<std::string>& notes);

} // namespace quoin
