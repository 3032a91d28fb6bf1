// The words of what moves until the closing.
#include "shift_words.hpp"

#include <algorithm>

#include "own_cautions.hpp"
#include "words/shift.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {

std::string words(const ShiftCase& moved, const Catalogue& say) {
    const std::string percent = moved.percent.value().text();
    switch (moved.change) {
    case ShiftChange::none:
        return say.shift.as_quoted();
    case ShiftChange::price:
        return say.shift.price((moved.amount > Money{} ? "+" : "") + percent);
    case ShiftChange::options:
        return say.shift.options(signed_dollars(moved.amount));
    case ShiftChange::appraisal:
        return say.shift.appraisal(percent);
    }
    return {};
}

Cautions cautions_of(const ShiftAnswer& answer, const Catalogue& say) {
    Cautions notes{{CautionCode::steps_no_forecast, say.shift.steps_no_forecast()}};
    const bool ratios = std::any_of(answer.scenarios.begin(), answer.scenarios.end(),
                                    [](const ShiftScenario& s) { return s.ratios.has_value(); });
    if (ratios) {
        notes.push_back({CautionCode::ratios_at_note_rate, say.shift.ratios_at_note_rate()});
    }
    notes = with_loan_cautions(std::move(notes), answer.heading, terms_of(answer.scenarios), say);
    notes.push_back(agent_caution(say));
    return notes;
}

} // namespace quoin
