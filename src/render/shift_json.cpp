// What moves until the closing, as JSON.
#include <quoin/answers/shift.hpp>

#include "own_cautions.hpp"
#include "shared_fields.hpp"
#include "shift_words.hpp"

namespace quoin {

void fields(auto& v, Of<ShiftCase> auto& moved) {
    v.words("name", [&](const Catalogue& say) { return words(moved, say); });
    v("change", moved.change);
    v("percent", moved.percent);
    v("amount", moved.amount);
}

void fields(auto& v, Of<ShiftCell> auto& cell) {
    v("refusals", cell.refusals);
    v.unless_refused(cell.available(), [&] {
        v("loan", cell.loan);
        v("monthly", cell.monthly);
        v("cash_needed", cell.cash_needed);
        v("cash_to_close", cell.to_close);
    });
}

void fields(auto& v, Of<ShiftRow> auto& row) {
    v.named("ShiftRate");
    v("steps", row.steps);
    v("by", row.by);
    v("rate", row.rate);
    v.apr("apr", row.apr);
    v("cells", row.cells);
}

void fields(auto& v, Of<ShiftLock> auto& lock) {
    v.named("ShiftLock");
    v("days", lock.days);
    v("ends", lock.ends);
    v("covers_closing", lock.covers_closing);
    v("chosen", lock.is_chosen);
    v("points", lock.points);
    v.only("extra_cash", lock.points.has_value(), lock.extra_cash);
}

void fields(auto& v, Of<ShiftRoom> auto& room) {
    v.named("ShiftRoom");
    v("to_a_thousandth", room.to_a_thousandth);
    v("in_steps", room.in_steps);
}

void fields(auto& v, Of<ShiftIncome> auto& one) {
    v.named("ShiftIncome");
    v("by", one.by);
    v("income", one.income);
    v("front", one.front);
    v("back", one.back);
    v("within", one.within);
    v("highest_rate", one.room);
}

void fields(auto& v, Of<ShiftRatios> auto& r) {
    v("front_limit", r.limits.front);
    v("back_limit", r.limits.back);
    v("back_limit_automated", r.limits.back_automated);
    v("residual_income_tested", r.residual_tested);
    v("residual_income_in_place_of_ratio", r.passes_by_ratio);
    v("source", r.limits.source);
    v("least_income", r.least_income);
    v("least_income_automated", r.least_income_automated);
    v("highest_rate_automated", r.room_automated);
    v("incomes", r.incomes);
}

void fields(auto& v, Of<ShiftScenario> auto& s) {
    v("terms", s.terms);
    v("refusals", s.refusals);
    v.unless_refused(s.available(), [&] {
        v("monthly", s.monthly);
        v("cash_needed", s.cash_needed);
        v("cases", s.cases);
        v("rates", s.rows);
        v("locks", s.locks);
        v("ratios", s.ratios);
        v.words("ratios_unknown",
                [&](const Catalogue& say) { return words_of(s.ratios_unknown, say); });
    });
}

void fields(auto& v, Of<ShiftAnswer> auto& answer) {
    v.named("Shift");
    v.constant("question", "shift");
    v("heading", answer.heading);
    v("step", answer.ask.step);
    v("contract_price", answer.contract_price);
    v("scenarios", answer.scenarios);
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const ShiftAnswer&, const Catalogue&);

template const Shape& shape_of<ShiftAnswer>();
template std::optional<ShiftAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
