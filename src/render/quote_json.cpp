// A quote as JSON.
#include <quoin/answers/quote.hpp>

#include "own_cautions.hpp"
#include "shared_fields.hpp"

namespace quoin {

void fields(auto& v, Of<QuoteLine> auto& line) {
    v("kind", line.kind);
    v("area", line.area);
    v("id", line.id);
    v("name", line.name);
    v("detail", line.detail);
    v("quantity", line.quantity);
    v("unit", line.unit);
    v("unit_price", line.unit_price);
    v("amount", line.amount);
    v("structural", line.structural);
    v("work", line.work);
    v("note", line.note);
}

void fields(auto& v, Of<QuoteRequest> auto& request) {
    v("area", request.area);
    v("text", request.text);
    v.constant("status", "to_be_confirmed");
    v("estimate", request.estimate);
}

void fields(auto& v, Of<OpenChoice> auto& choice) {
    v("area", choice.area);
    v("id", choice.id);
    v("name", choice.name);
    v("default", choice.default_choice);
}

void fields(auto& v, Of<QuoteCredit> auto& credit) {
    v("id", credit.id);
    v("name", credit.name);
    v("use", credit.use);
    v("amount", credit.amount);
}

void fields(auto& v, Of<QuoteAnswer> auto& answer) {
    v.named("Quote");
    v.constant("question", "quote");
    v("heading", answer.heading);
    v("lines", answer.lines);
    v("options", answer.options);
    v("incentives", answer.incentives);
    v("contract_price", answer.contract_price);
    v("requests", answer.requests);
    v("open_choices", answer.open_choices);
    v("credits", answer.credits);
    v("incentive_conditions", answer.incentive_conditions);
    v("incentive_lenders", answer.incentive_lenders);
    v.object("deposits", [&] {
        v("earnest", answer.earnest_deposit);
        v("options", answer.option_deposit);
        v("paid", answer.deposits_paid);
        v("note", answer.deposit_note);
    });
    v("scenarios", answer.scenarios);
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const QuoteAnswer&, const Catalogue&);

template const Shape& shape_of<QuoteAnswer>();
template std::optional<QuoteAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
