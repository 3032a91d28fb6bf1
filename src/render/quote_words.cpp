// Wording a quote's parts.
#include "quote_words.hpp"

#include "words/parts.hpp"
#include "words/quote.hpp"

namespace quoin {

std::string line_name(const QuoteLine& line, const Catalogue& say) {
    switch (line.kind) {
    case LineKind::base:
        return say.quote.base_price(line.name);
    case LineKind::elevation:
        return say.quote.elevation(line.name);
    case LineKind::lot:
        return say.quote.lot_premium(line.name);
    default:
        break;
    }
    const std::string name =
        line.detail.empty() ? line.name : say.quote.named(line.name, line.detail);
    return line.work.any() ? name + " *" : name;
}

std::string times_text(const QuoteLine& line, const Catalogue& say) {
    if (line.kind == LineKind::choice || line.kind == LineKind::in_package) return {};
    if (line.quantity == Decimal::whole(1) && line.unit == Unit::each) return {};
    const std::string unit = line.unit == Unit::each ? "" : " " + say.parts.unit(line.unit);
    return say.quote.times(grouped(line.quantity), unit, line.unit_price);
}

std::string amount_text(const QuoteLine& line, const Catalogue& say) {
    if (line.kind == LineKind::choice) return say.quote.no_cost();
    if (line.kind == LineKind::in_package) return say.quote.in_package();
    return dollars(line.amount);
}

std::string request_text(const QuoteRequest& request, const Catalogue& say) {
    return say.quote.request(request.area, request.text,
                             request.estimate ? say.quote.estimated(*request.estimate) : "");
}

std::string choice_text(const OpenChoice& choice, const Catalogue& say) {
    return say.quote.open_choice(choice.area, choice.name, choice.default_choice);
}

std::vector<std::string> incentive_texts(const QuoteAnswer& answer, const Catalogue& say) {
    std::vector<std::string> texts;
    for (const QuoteCredit& credit : answer.credits) {
        texts.push_back(say.quote.towards(credit.name, say.quote.use(credit.use), credit.amount));
    }
    texts.insert(texts.end(), answer.incentive_conditions.begin(),
                 answer.incentive_conditions.end());
    for (const std::string& lender : answer.incentive_lenders) {
        texts.push_back(say.quote.only_with(lender));
    }
    return texts;
}

} // namespace quoin
