// The tour as JSON.
#include <quoin/answers/tour.hpp>

#include "own_cautions.hpp"
#include "shown_fields.hpp"

namespace quoin {

template <class V, Of<TourPick> A>
void fields(V& v, A& pick) {
    v.named("TourPick");
    v("option", pick.option);
    v.when(!pick.level.empty(), [&] { v("level", pick.level); });
    v.when(!pick.choice.empty(), [&] { v("choice", pick.choice); });
    v.given("quantity", pick.quantity, [&](auto& quantity) { v("quantity", quantity); });
    v.given("spend", pick.spend, [&](auto& spend) { v("spend", spend); });
}

template <class V, Of<TourTouch> A>
void fields(V& v, A& touch) {
    v.named("Touch");
    v("takes_out", touch.takes_out);
    v("price", touch.price);
    difference(v, touch.added);
    v.words("jumps", [&] { return jump_words(touch.added); });
    v("along", touch.along);
    v("instead_of", touch.instead);
    v("brings", touch.brings);
    v("drops", touch.drops);
}

template <class V, Of<TourForm> A>
void fields(V& v, A& form) {
    v.named("Form");
    v("id", form.id);
    v("name", form.name);
    v("note", form.note);
    v("state", form.state);
    v("why", form.why);
    v("price", form.price);
    v("touch", form.touch);
}

template <class V, Of<TourQuantity> A>
void fields(V& v, A& quantity) {
    const bool asked = quantity.from == Quantity::From::buyer;
    v("now", quantity.now);
    v("unit", quantity.unit);
    v.held(
        "asked", [&] { return asked; },
        [&](auto by_buyer) {
            quantity.from = by_buyer ? Quantity::From::buyer : Quantity::From::plan;
        });
    v.when(asked, [&] {
        v("lowest", quantity.lowest);
        v("highest", quantity.highest);
        v("step", quantity.step);
        v("usual", quantity.usual);
        v("limits", quantity.limits);
    });
}

template <class V, Of<Later> A>
void fields(V& v, A& later) {
    v("estimate", later.estimate);
    v("each", later.each);
    v("note", later.note);
}

template <class V, Of<TourOption> A>
void fields(V& v, A& item) {
    v.named("Option");
    v("id", item.id);
    v("name", item.name);
    v("kind", item.kind);
    v("text", item.text);
    v("note", item.note);
    v("picked", item.picked);
    v("agreed", item.agreed);
    v.counted("wish", item.wish);
    v("structural", item.structural);
    v("work", item.work);
    v("cutoff", item.cutoff);
    v("cutoff_passed", item.cutoff_passed);
    v("one_of", item.one_of);
    v("later", item.later);
    v("quantity", item.quantity);
    v("budget", item.budget);
    v("spend", item.spend);
    v("parts", item.parts);
    v("forms", item.forms);
}

template <class V, Of<TourArea> A>
void fields(V& v, A& area) {
    v.named("Area");
    v("id", area.id);
    v("name", area.name);
    v("included", area.included);
    v("shown", area.shown);
    v("options", area.options);
    v.each("requests", area.requests, [&](auto& request, std::size_t) {
        v("text", request.text);
        v("estimate", request.estimate);
    });
}

template <class V, Of<IncentiveUsed> A>
void fields(V& v, A& used) {
    v("use", used.use);
    v("amount", used.asked);
    v("given", used.given);
}

template <class V, Of<IncentiveOffer> A>
void fields(V& v, A& offer) {
    v.named("Incentive");
    v("id", offer.id);
    v("name", offer.name);
    v("amount", offer.whole);
    v("left", offer.left);
    v("conditions", offer.conditions);
    v("lender", offer.lender);
    v("expires", offer.expires);
    v("close_by", offer.close_by);
    v("why_not", offer.why_not);
    v("uses", offer.uses);
    v("used", offer.used);
}

template <class V, Of<TourAnswer> A>
void fields(V& v, A& answer) {
    v.named("Tour");
    v.constant("question", "tour");
    v("heading", answer.heading);
    v("contract_price", answer.contract_price);
    v("options", answer.options_price);
    v("stage", answer.stage);
    v("model", answer.model);
    v("scenario", answer.scenario);
    v("areas", answer.areas);
    v("incentives", answer.incentives);
    v.words("cautions", [&] { return cautions_of(answer); });
}

template std::string json_text_of(const TourAnswer&);

template const Shape& shape_of<TourAnswer>();
template std::optional<TourAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
