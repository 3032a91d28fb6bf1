// The tour as JSON.
#include <quoin/answers/tour.hpp>

#include "look_fields.hpp"
#include "own_cautions.hpp"
#include "shown_fields.hpp"
#include <quoin/words/reasons.hpp>

namespace quoin {

void fields(auto& v, Of<TourPick> auto& pick) {
    v.named("TourPick");
    v("option", pick.option);
    v.when(!pick.level.empty(), [&] { v("level", pick.level); });
    v.when(!pick.choice.empty(), [&] { v("choice", pick.choice); });
    v.given("quantity", pick.quantity, [&](auto& quantity) { v("quantity", quantity); });
    v.given("spend", pick.spend, [&](auto& spend) { v("spend", spend); });
}

void fields(auto& v, Of<TourTouch> auto& touch) {
    v.named("Touch");
    v("takes_out", touch.takes_out);
    v("price", touch.price);
    difference(v, touch.added);
    v.words("jumps", [&](const Catalogue& say) { return jump_words(touch.added, say); });
    v("along", touch.along);
    v("instead_of", touch.instead);
    v("brings", touch.brings);
    v("drops", touch.drops);
}

void fields(auto& v, Of<TourForm> auto& form) {
    v.named("Form");
    v("id", form.id);
    v("name", form.name);
    v("note", form.note);
    v.when(!form.office_note.empty(), [&] { v("office_note", form.office_note); });
    look_fields(v, form.look);
    v("state", form.state);
    v.words("why", [&](const Catalogue& say) {
        return form.why_not ? words_of(form.why_not, say) : form.package;
    });
    v("price", form.price);
    v("touch", form.touch);
}

void fields(auto& v, Of<TourQuantity> auto& quantity) {
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
        v.words("limits", [&](const Catalogue& say) { return words_of(quantity.limits(), say); });
    });
}

void fields(auto& v, Of<Later> auto& later) {
    v("estimate", later.estimate);
    v("each", later.each);
    v("note", later.note);
}

void fields(auto& v, Of<TourOption> auto& item) {
    v.named("Option");
    v("id", item.id);
    v("name", item.name);
    v("kind", item.kind);
    v("text", item.text);
    v("note", item.note);
    v.when(!item.office_note.empty(), [&] { v("office_note", item.office_note); });
    look_fields(v, item.look);
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

void fields(auto& v, Of<TourArea> auto& area) {
    v.named("Area");
    v("id", area.id);
    v("name", area.name);
    v("price", area.price);
    v("included", area.included);
    v("shown", area.shown);
    v("options", area.options);
    v.each("requests", area.requests, [&](auto& request, std::size_t) {
        v("text", request.text);
        v("estimate", request.estimate);
    });
}

void fields(auto& v, Of<NamedPick> auto& pick) {
    v.named("NamedPick");
    v("option", pick.option);
    v("name", pick.name);
    v("form", pick.form);
}

void fields(auto& v, Of<TourAreaInShort> auto& area) {
    v.named("AreaInShort");
    v("id", area.id);
    v("name", area.name);
    v("price", area.price);
    v("chosen", area.chosen);
}

void fields(auto& v, Of<IncentiveUsed> auto& used) {
    v("use", used.use);
    v("amount", used.asked);
    v("given", used.given);
}

void fields(auto& v, Of<IncentiveOffer> auto& offer) {
    v.named("Incentive");
    v("id", offer.incentive.id);
    v("name", offer.incentive.name);
    v("amount", offer.whole);
    v("left", offer.left);
    v("conditions", offer.incentive.conditions);
    v("lender", offer.incentive.lender);
    v("expires", offer.incentive.expires);
    v("close_by", offer.incentive.close_by);
    v.words("why_not", [&](const Catalogue& say) { return words_of(offer.why_not, say); });
    v("uses", offer.incentive.uses);
    v("used", offer.used);
}

void fields(auto& v, Of<TourEmptied> auto& emptied) {
    v.named("Emptied");
    v("keeps", emptied.keeps);
    v("price", emptied.price);
    difference(v, emptied.added);
}

void fields(auto& v, Of<TourAnswer> auto& answer) {
    v.named("Tour");
    v.constant("question", "tour");
    v("heading", answer.heading);
    v("contract_price", answer.contract_price);
    v("options", answer.options_price);
    v("stage", answer.stage);
    v("drawn", answer.drawn);
    v("model", answer.model);
    v("scenario", answer.scenario);
    v("all_areas", answer.all_areas);
    v("areas", answer.areas);
    v("wishes", answer.wishes);
    v("incentives", answer.incentives);
    v("emptied", answer.emptied);
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const TourAnswer&, const Catalogue&);

template const Shape& shape_of<TourAnswer>();
template std::optional<TourAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
