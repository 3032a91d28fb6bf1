// Cautions: what has to be known beside the figures of an answer.
//
//   loan_cautions(answer.heading, terms).front().words  ->  "An estimate as of November 24, 2026:
//   ..."
//
// Each has a code and a sentence. Two answers say the same caution where the code is the same and
// what it is about; the sentence is for people alone.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/render/blocks.hpp>
#include <quoin/text/codes.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

enum class CautionCode : std::uint8_t {
    // Of loans, in any answer.
    estimate,
    rates_until_locked,
    costs_as_known,
    rule_continued,
    lock_ends_first,
    rate_adjustable,
    extra_principal,
    licensed_trades,
    agent_license,
    // Of one question.
    touch_is_difference,
    alone_and_stacked,
    ratios_are_guides,
    ratios_at_note_rate,
    steps_no_forecast,
    costs_over_the_home_without,
    trades_whenever,
    worth_of_wishes,
    survey_decides,
    sizes_as_drawn,
    points_before_adjustments,
    money_on_top,
    cost_spent_and_owed,
    money_with_conditions,
    paid_in_cash,
    principal_and_interest_alone,
    actuarial_method,
};
template <>
inline constexpr auto codes<CautionCode> =
    coded<CautionCode>({{CautionCode::estimate, "estimate"},
                        {CautionCode::rates_until_locked, "rates_until_locked"},
                        {CautionCode::costs_as_known, "costs_as_known"},
                        {CautionCode::rule_continued, "rule_continued"},
                        {CautionCode::lock_ends_first, "lock_ends_first"},
                        {CautionCode::rate_adjustable, "rate_adjustable"},
                        {CautionCode::extra_principal, "extra_principal"},
                        {CautionCode::licensed_trades, "licensed_trades"},
                        {CautionCode::agent_license, "agent_license"},
                        {CautionCode::touch_is_difference, "touch_is_difference"},
                        {CautionCode::alone_and_stacked, "alone_and_stacked"},
                        {CautionCode::ratios_are_guides, "ratios_are_guides"},
                        {CautionCode::ratios_at_note_rate, "ratios_at_note_rate"},
                        {CautionCode::steps_no_forecast, "steps_no_forecast"},
                        {CautionCode::costs_over_the_home_without, "costs_over_the_home_without"},
                        {CautionCode::trades_whenever, "trades_whenever"},
                        {CautionCode::worth_of_wishes, "worth_of_wishes"},
                        {CautionCode::survey_decides, "survey_decides"},
                        {CautionCode::sizes_as_drawn, "sizes_as_drawn"},
                        {CautionCode::points_before_adjustments, "points_before_adjustments"},
                        {CautionCode::money_on_top, "money_on_top"},
                        {CautionCode::cost_spent_and_owed, "cost_spent_and_owed"},
                        {CautionCode::money_with_conditions, "money_with_conditions"},
                        {CautionCode::paid_in_cash, "paid_in_cash"},
                        {CautionCode::principal_and_interest_alone, "principal_and_interest_alone"},
                        {CautionCode::actuarial_method, "actuarial_method"}});

struct Caution {
    CautionCode code = CautionCode::estimate;
    std::string words;
    /// Of several with one code: the days of a lock, a program and its list, ways to pay.
    std::vector<std::string> about = {};
};
using Cautions = std::vector<Caution>;

/// That it is an estimate, and who decides.
[[nodiscard]] Caution estimate_caution(const Heading& heading,
                                       const Catalogue& say = catalogue_in(Language::english));
/// What must stand beside every payment and rate, in short sentences.
[[nodiscard]] Cautions loan_cautions(const Heading& heading,
                                     const std::vector<ScenarioTerms>& terms,
                                     const Catalogue& say = catalogue_in(Language::english));
/// What an answer says of its own, then the cautions of its loans.
[[nodiscard]] Cautions with_loan_cautions(Cautions own, const Heading& heading,
                                          const std::vector<ScenarioTerms>& terms,
                                          const Catalogue& say = catalogue_in(Language::english));
/// The terms out of any list of scenarios.
template <class Scenarios>
[[nodiscard]] std::vector<ScenarioTerms> terms_of(const Scenarios& scenarios) {
    std::vector<ScenarioTerms> terms;
    for (const auto& scenario : scenarios) terms.push_back(scenario.terms);
    return terms;
}
/// That a program's last edition of a list is used beyond its end.
[[nodiscard]] Caution continued_caution(std::string_view program, const ListGap& gap,
                                        const Catalogue& say = catalogue_in(Language::english));
/// The same of each list of each program, once.
void add_continued_cautions(const std::vector<ScenarioTerms>& terms, Cautions& cautions,
                            const Catalogue& say = catalogue_in(Language::english));
/// For marked work that needs a permit or a licensed trade.
[[nodiscard]] Caution work_caution(const Catalogue& say = catalogue_in(Language::english));
/// Who may present loan terms: for the agent, once.
[[nodiscard]] Caution agent_caution(const Catalogue& say = catalogue_in(Language::english));

[[nodiscard]] std::vector<std::string> words_of(const Cautions& cautions);
/// The last lines of a text.
[[nodiscard]] Blocks footing_text(const Cautions& cautions);

} // namespace quoin
