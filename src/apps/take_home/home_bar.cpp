// Figures written as the page writes them: without cents where there are none, rates to three
// decimals.
#include "home_bar.hpp"

#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

#include "render/html.hpp"

namespace quoin::apps {
namespace {

std::string without_cents(std::string amount) {
    constexpr std::string_view none = ".00";
    if (amount.ends_with(none)) amount.resize(amount.size() - none.size());
    return amount;
}

Placed terms_values(const Heading& heading, const ScenarioTerms& terms,
                    const HomeDocument& document, const Catalogue& say) {
    Placed values{
        {"loan", escaped(terms.program)},
        {"rate", percent_text(terms.rate.percent(), 3)},
        {"apr", terms.apr ? percent_text(terms.apr->percent(), 3) : document.text("apr_not_found")},
        {"term", escaped(term_text(terms.term, say))},
        {"down", without_cents(dollars(terms.down_payment))},
        {"down_percent", percent_text(terms.down_percent.value(), 2)},
        {"as_of", document.day(heading.as_of)}};
    if (terms.adjustable) {
        values["highest"] = percent_text(terms.adjustable->ceiling.percent(), 3);
    }
    return values;
}

std::string closing_of(const CashToClose& cash, const HomeDocument& document) {
    const bool back = cash.to_close() < Money{};
    const Money amount = back ? Money{} - cash.to_close() : cash.to_close();
    const std::string& name = document.text(back ? "back_at_closing" : "cash_to_close");
    return document.filled("closing", {{"closing_name", name}, {"cash_to_close", dollars(amount)}});
}

} // namespace

Placed bar_values(const Heading& heading, const ScenarioAnswer& loan, const HomeDocument& document,
                  const Catalogue& say) {
    Placed values{{"title", escaped(heading.community + " – quoin")},
                  {"community", escaped(heading.community)},
                  {"price", without_cents(dollars(loan.price))},
                  {"month", document.text("not_to_be_had")},
                  {"cash", "–"},
                  {"closing", ""},
                  {"terms", ""}};
    if (!loan.available()) return values;
    values["month"] = dollars(loan.monthly.total());
    values["cash"] = dollars(loan.cash.needed());
    values["closing"] = closing_of(loan.cash, document);
    values["terms"] = document.filled(loan.terms.adjustable ? "terms_adjustable" : "terms",
                                      terms_values(heading, loan.terms, document, say));
    return values;
}

} // namespace quoin::apps
