// The words of what moves until the closing.
#include "shift_words.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "own_cautions.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {

std::string words(const ShiftCase& moved) {
    const std::string percent = moved.percent.value().text();
    switch (moved.change) {
    case ShiftChange::none:
        return "as it stands";
    case ShiftChange::price:
        return fmt::format("price {}{} %", moved.amount > Money{} ? "+" : "", percent);
    case ShiftChange::options:
        return "options " + signed_dollars(moved.amount);
    case ShiftChange::appraisal:
        return fmt::format("appraised {} %", percent);
    }
    return {};
}

Cautions cautions_of(const ShiftAnswer& answer, const Catalogue& say) {
    Cautions notes{
        {CautionCode::steps_no_forecast,
         "A figure with a sign is the difference to the quote as it stands. Nobody knows where "
         "rates will be at the closing: these are steps, not a forecast. A rate "
         "moves as the whole ladder does, each rung with its points. Until a rate is locked it can "
         "be any of these, or past them."}};
    const bool ratios = std::any_of(answer.scenarios.begin(), answer.scenarios.end(),
                                    [](const ShiftScenario& s) { return s.ratios.has_value(); });
    if (ratios) {
        notes.push_back(
            {CautionCode::ratios_at_note_rate,
             "Ratios are of gross monthly income, at the note rate; of a loan whose rate can rise, "
             "at the rate that its program qualifies buyers at. Where the income moves, the taxes "
             "on it stay as they are. They are guides of the published rules, not an approval: "
             "lenders look at more, and go above or stay below. Income and debts are private: they "
             "are shown because the inquiry has them."});
    }
    notes = with_loan_cautions(std::move(notes), answer.heading, terms_of(answer.scenarios));
    notes.push_back(agent_caution(say));
    return notes;
}

} // namespace quoin
