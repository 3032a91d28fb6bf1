// Rendering an APR.
#include <quoin/answers/apr.hpp>

#include "shared_fields.hpp"
#include "words/payment.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

Cautions cautions(const Catalogue& say) {
    return {{CautionCode::actuarial_method, say.payment.actuarial_method()}};
}

} // namespace

Blocks blocks_of(const AprAnswer& answer, const Catalogue& say) {
    const PaymentWords& of = say.payment;
    Table table({{"", Align::left}, {"", Align::right}});
    table.row({of.apr(), percent_text(answer.apr, 6)});
    table.row({of.advanced(), dollars(answer.advanced)});
    table.row({of.paid(), dollars(answer.paid)});
    table.row({of.finance_charge(), dollars(answer.finance_charge)});
    return table + footing_text(cautions(say));
}

void fields(auto& v, Of<AprAnswer> auto& answer) {
    v.named("Apr");
    v.constant("question", "apr");
    v.said("apr", [&] { return fixed(answer.apr, 6); });
    v("advanced", answer.advanced);
    v("paid", answer.paid);
    v("finance_charge", answer.finance_charge);
    v.words("cautions", [](const Catalogue& say) { return cautions(say); });
}

template std::string json_text_of(const AprAnswer&, const Catalogue&);

template const Shape& shape_of<AprAnswer>();

} // namespace quoin
