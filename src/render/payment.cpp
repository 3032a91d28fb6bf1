// Rendering the quick answer.
#include <quoin/answers/payment.hpp>

#include "shared_fields.hpp"
#include "words/payment.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

Cautions cautions(const Catalogue& say) {
    return {
        {CautionCode::principal_and_interest_alone, say.payment.principal_and_interest_alone()}};
}

} // namespace

Blocks blocks_of(const PaymentAnswer& a, const Catalogue& say) {
    const PaymentWords& of = say.payment;
    Table table({{"", Align::left}, {"", Align::right}});
    table.row({of.loan(), dollars(a.terms.loan)});
    table.row({of.note_rate(), rate_text(a.terms.rate)});
    table.row({of.term(), term_text(a.terms.term, say)});
    table.rule();
    table.row({of.payment(), dollars(a.payment)});
    table.row({of.payments(), std::to_string(a.months)});
    table.row({of.last_payment(), dollars(a.last_payment)});
    table.row({of.total_interest(), dollars(a.total_interest)});
    table.row({of.total_of_payments(), dollars(a.total_of_payments)});
    return table + footing_text(cautions(say));
}

void fields(auto& v, Of<PaymentAnswer> auto& answer) {
    v.named("Payment");
    v.constant("question", "payment");
    v("loan", answer.terms.loan);
    v("rate", answer.terms.rate);
    v.said("apr", [&] { return disclosed(answer.terms.rate.percent()); });
    v("term_months", answer.terms.term);
    v("payment", answer.payment);
    v("total_interest", answer.total_interest);
    v("total_of_payments", answer.total_of_payments);
    v("last_payment", answer.last_payment);
    v("months", answer.months);
    v.words("cautions", [](const Catalogue& say) { return cautions(say); });
}

template std::string json_text_of(const PaymentAnswer&, const Catalogue&);

template const Shape& shape_of<PaymentAnswer>();

} // namespace quoin
