// What options add, as JSON.
#include <quoin/answers/adds.hpp>

#include "own_cautions.hpp"
#include "shared_fields.hpp"
#include "words/adds.hpp"
#include <quoin/words/reasons.hpp>

namespace quoin {

void fields(auto& v, Of<JumpSide> auto& side) {
    v("band", side.band);
    v("value", side.value);
}

void fields(auto& v, Of<Added> auto& added) {
    v.named("Added");
    v.said("available", [&] { return added.available(); });
    v.when(!added.available(), [&] { v("refusals", added.refusals); });
    v.unless_refused(added.available(), [&] {
        v("per_month", added.per_month);
        v("monthly", added.monthly);
        v("cash_needed", added.cash);
        v("cash_to_close", added.to_close);
        v("in_five_years", added.in_five_years);
        v("over_loan", added.over_loan);
        v.each("jumps", added.jumps, [&](auto& jump, std::size_t) {
            v("why", jump.lookup);
            v("before", jump.before);
            v("after", jump.after);
            v.words("words", [&](const Catalogue& say) { return words(jump, added, say); });
        });
    });
}

namespace {

void by_scenario(auto& v, const AddsAnswer& answer, auto& differences) {
    v.each("by_scenario", differences, [&](auto& added, std::size_t scenario) {
        v.said("scenario", [&] { return answer.scenarios[scenario].terms.name; });
        v.all_of(added);
    });
}

void item_fields(auto& v, const AddsAnswer& answer, auto& item) {
    v("id", item.id);
    v("name", item.name);
    v("level", item.level);
    v("area", item.area);
    v("standing", item.standing);
    v.counted("wish", item.wish);
    v("quantity", item.quantity);
    v("unit", item.unit);
    v("structural", item.structural);
    v("work", item.work);
    v("cutoff", item.cutoff);
    v("note", item.note);
    v.maybe("later", item.later, [&](auto& later) {
        v("estimate", later.estimate);
        v("note", later.note);
    });
    v.when(item.standing == Standing::barred, [&] {
        v.words("why_not", [&](const Catalogue& say) { return words_of(item.why_not, say); });
    });
    v.when(item.standing == Standing::held, [&] { v("package", item.package); });
    v.when(!item.by_scenario.empty(), [&] {
        v("price", item.price);
        v("along", item.along);
        v("instead_of", item.instead);
        by_scenario(v, answer, item.by_scenario);
    });
    v.given("in_home", item.in_home, [&](auto& there) {
        v.object("in_home", [&] {
            v("price", there.price);
            by_scenario(v, answer, there.by_scenario);
        });
    });
}

void figures_of_step(auto& v, const AddsAnswer& answer, auto& step) {
    v("level", step.level);
    v("price", step.price);
    by_scenario(v, answer, step.by_scenario);
}

void step_fields(auto& v, const AddsAnswer& answer, auto& step) {
    v("id", step.id);
    v("name", step.name);
    figures_of_step(v, answer, step);
}

/// All steps together: one of them, of no option.
void whole_fields(auto& v, const AddsAnswer& answer, auto& whole) {
    v("id", whole.id);
    v.words("name", [](const Catalogue& say) { return say.adds.together(); });
    figures_of_step(v, answer, whole);
}

} // namespace

void fields(auto& v, Of<AddsScenario> auto& scenario) {
    v("terms", scenario.terms);
    v("per_thousand", scenario.per_thousand);
    v("monthly", scenario.monthly);
    v("refusals", scenario.refusals);
}

void fields(auto& v, Of<AddsAnswer> auto& answer) {
    v.named("Adds");
    v.constant("question", "adds");
    v("heading", answer.heading);
    v("contract_price", answer.contract_price);
    v("scenarios", answer.scenarios);
    v.each("items", answer.items, [&](auto& item, std::size_t) { item_fields(v, answer, item); });
    v.each("stacked", answer.stacked,
           [&](auto& step, std::size_t) { step_fields(v, answer, step); });
    v.object("whole", [&] { whole_fields(v, answer, answer.whole); });
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const AddsAnswer&, const Catalogue&);

template const Shape& shape_of<AddsAnswer>();
template std::optional<AddsAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
