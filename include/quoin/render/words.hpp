// The words that renderings share: parts of a month, refusals, reasons of jumps.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/render/blocks.hpp>
#include <quoin/words/catalogue.hpp>
#include <quoin/words/joined.hpp>

namespace quoin {

[[nodiscard]] std::string words(const Refusal& refusal,
                                const Catalogue& say = catalogue_in(Language::english));
/// "FHA, 3.5% down is not available: ...", of a scenario by its name.
[[nodiscard]] std::string refused_words(const std::string& scenario, const Refusal& refusal,
                                        const Catalogue& say = catalogue_in(Language::english));
/// "the credit score is below the program's minimum; ...", of all of them.
[[nodiscard]] std::string words(const std::vector<Refusal>& refusals, const Catalogue& say);
/// A line for each reason.
[[nodiscard]] Blocks refused_lines(const ScenarioTerms& terms, const std::vector<Refusal>& refusals,
                                   const Catalogue& say = catalogue_in(Language::english));
/// "the program's loan limit"
[[nodiscard]] std::string words(RuleList list,
                                const Catalogue& say = catalogue_in(Language::english));
/// "the program's loan limit is known only through December 31, 2026"
[[nodiscard]] std::string words(const ListGap& gap,
                                const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::vector<std::string>
words_of(const std::vector<ListGap>& gaps, const Catalogue& say = catalogue_in(Language::english));
/// What changed, from which band and value to which.
[[nodiscard]] std::string words(const Jump& jump,
                                const Catalogue& say = catalogue_in(Language::english));
/// The same, led by the LTV before and after where it moved.
[[nodiscard]] std::string words(const Jump& jump, const Added& added,
                                const Catalogue& say = catalogue_in(Language::english));

/// Every jump of a difference, likewise.
[[nodiscard]] std::vector<std::string>
jump_words(const Added& added, const Catalogue& say = catalogue_in(Language::english));

/// What money went to: "the temporary buydown"; an upfront fee by what it is in this scenario.
[[nodiscard]] std::string words(CreditUse use, const ScenarioAnswer& scenario,
                                const Catalogue& say = catalogue_in(Language::english));

/// "30 years", "15 years", "181 months".
[[nodiscard]] std::string term_text(Months term,
                                    const Catalogue& say = catalogue_in(Language::english));
/// "interest rate 6.125%, 0.000 points, APR 6.4%, ..." : what must stand beside a payment.
[[nodiscard]] std::string terms_line(const ScenarioTerms& terms,
                                     const Catalogue& say = catalogue_in(Language::english));

/// What of the cash is left for the closing: "$1,729.95 cash to close", or "cash back at closing".
[[nodiscard]] std::string closing_words(const CashToClose& cash,
                                        const Catalogue& say = catalogue_in(Language::english));

/// "12 of them", "240 sq ft".
[[nodiscard]] std::string quantity_text(Decimal quantity, Unit unit,
                                        const Catalogue& say = catalogue_in(Language::english));

/// Title, home, dates: the first lines of every text.
[[nodiscard]] Blocks heading_text(const Heading& heading, std::string_view title,
                                  const Catalogue& say = catalogue_in(Language::english));

} // namespace quoin
