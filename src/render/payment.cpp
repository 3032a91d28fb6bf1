// Rendering the quick answer.
#include <quoin/answers/payment.hpp>

#include "shared_fields.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

Cautions cautions() {
    return {{CautionCode::principal_and_interest_alone,
             "An estimate of principal and interest alone, with no points or fees, so that the APR "
             "equals the rate: not a Loan Estimate, not an approval, not an offer to lend. Taxes, "
             "insurance, dues and mortgage insurance come on top. A licensed loan originator gives "
             "an offer."}};
}

} // namespace

std::string text_of(const PaymentAnswer& a, const Catalogue& /*say*/) {
    Table table({{"", Align::left}, {"", Align::right}});
    table.row({"loan", dollars(a.terms.loan)});
    table.row({"note rate", rate_text(a.terms.rate)});
    table.row({"term", term_text(a.terms.term)});
    table.rule();
    table.row({"payment a month", dollars(a.payment)});
    table.row({"payments", std::to_string(a.months)});
    table.row({"last payment", dollars(a.last_payment)});
    table.row({"total interest", dollars(a.total_interest)});
    table.row({"total of payments", dollars(a.total_of_payments)});
    return table.text() + footing_text(cautions());
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
    v.words("cautions", [] { return cautions(); });
}

template std::string json_text_of(const PaymentAnswer&, const Catalogue&);

template const Shape& shape_of<PaymentAnswer>();

} // namespace quoin
