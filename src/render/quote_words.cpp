// Wording a quote's parts.
#include "quote_words.hpp"

#include <fmt/format.h>

#include <quoin/render/format.hpp>

namespace quoin {

std::string line_name(const QuoteLine& line) {
    switch (line.kind) {
    case LineKind::base:
        return line.name + ", base price";
    case LineKind::elevation:
        return "Elevation " + line.name;
    case LineKind::lot:
        return "Lot " + line.name + ", premium";
    default:
        break;
    }
    std::string name = line.detail.empty() ? line.name : line.name + ": " + line.detail;
    return line.work.any() ? name + " *" : name;
}

std::string times_text(const QuoteLine& line) {
    if (line.kind == LineKind::choice || line.kind == LineKind::in_package) return {};
    if (line.quantity == Decimal::whole(1) && line.unit == Unit::each) return {};
    const std::string unit =
        line.unit == Unit::each ? std::string{} : " " + std::string(name_of(line.unit));
    return fmt::format("{}{} x {}", grouped(line.quantity), unit, dollars(line.unit_price));
}

std::string amount_text(const QuoteLine& line) {
    if (line.kind == LineKind::choice) return "no cost";
    if (line.kind == LineKind::in_package) return "in a package";
    return dollars(line.amount);
}

std::string request_text(const QuoteRequest& request) {
    const std::string estimate =
        request.estimate ? fmt::format(", estimated at {}", dollars(*request.estimate)) : "";
    return request.area + ": " + request.text + estimate;
}

std::string choice_text(const OpenChoice& choice) {
    return fmt::format("{}: {} (else {})", choice.area, choice.name, choice.default_choice);
}

std::vector<std::string> incentive_texts(const QuoteAnswer& answer) {
    std::vector<std::string> texts;
    for (const QuoteCredit& credit : answer.credits) {
        texts.push_back(fmt::format("{} towards {}: {}", credit.name, name_of(credit.use),
                                    dollars(credit.amount)));
    }
    texts.insert(texts.end(), answer.incentive_conditions.begin(),
                 answer.incentive_conditions.end());
    for (const std::string& lender : answer.incentive_lenders) {
        texts.push_back(fmt::format("This incentive is given only with a loan from {}; you may "
                                    "choose any lender, and then go without it.",
                                    lender));
    }
    return texts;
}

} // namespace quoin
