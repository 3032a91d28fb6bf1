// Rendering an APR.
#include <quoin/answers/apr.hpp>

#include "shared_fields.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

Cautions cautions() {
    return {{CautionCode::actuarial_method,
             "By the actuarial method of 12 CFR 1026, Appendix J, from the flows as they were "
             "given. An estimate, not a federal disclosure."}};
}

} // namespace

std::string text_of(const AprAnswer& answer, const Catalogue& /*say*/) {
    Table table({{"", Align::left}, {"", Align::right}});
    table.row({"APR", percent_text(answer.apr, 6)});
    table.row({"advanced", dollars(answer.advanced)});
    table.row({"paid", dollars(answer.paid)});
    table.row({"finance charge", dollars(answer.finance_charge)});
    return table.text() + footing_text(cautions());
}

void fields(auto& v, Of<AprAnswer> auto& answer) {
    v.named("Apr");
    v.constant("question", "apr");
    v.said("apr", [&] { return fixed(answer.apr, 6); });
    v("advanced", answer.advanced);
    v("paid", answer.paid);
    v("finance_charge", answer.finance_charge);
    v.words("cautions", [] { return cautions(); });
}

template std::string json_text_of(const AprAnswer&, const Catalogue&);

template const Shape& shape_of<AprAnswer>();

} // namespace quoin
