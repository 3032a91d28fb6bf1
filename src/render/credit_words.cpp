// The words of a builder's money.
#include "credit_words.hpp"

#include <algorithm>

#include "own_cautions.hpp"
#include "words/cash.hpp"
#include "words/credit.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {

std::string fee_name(const CreditScenario& s, const Catalogue& say) {
    return s.is_single_premium ? say.cash.single_premium(s.upfront_name) : s.upfront_name;
}

std::string use_name(const CreditPure& pure, const CreditScenario& s, const Catalogue& say) {
    const bool named = pure.way == CreditWay::upfront_fee && !s.upfront_name.empty();
    return named ? say.credit.in_cash(fee_name(s, say)) : say.credit.way(pure.way);
}

std::string buydown_name(const std::vector<Percent>& steps) {
    std::string name;
    for (const Percent step : steps) name += (name.empty() ? "" : "-") + step.value().text();
    return steps.size() == 1 ? name + "-0" : name;
}

std::string why_not(const CreditPure& pure, const CreditAsk& ask, const Catalogue& say) {
    const CreditWords& of = say.credit;
    if (pure.needed > ask.amount) return of.takes(pure.needed);
    if (!pure.needed.is_zero()) return of.takes_more_than_cap(pure.needed);
    return pure.way == CreditWay::points ? of.no_lower_rate() : of.not_with_this_loan();
}

std::string years_words(int years, const CreditScenario& s, const Catalogue& say) {
    const Months asked(years * months_a_year);
    return asked >= s.terms.term ? say.credit.whole_loan() : term_text(asked, say);
}

std::string uses_words(const CreditMix& mix, const CreditScenario& s, const Catalogue& say) {
    const CreditWords& of = say.credit;
    std::vector<std::string> uses;
    const auto add = [&](Money amount, const auto& phrase, const auto&... more) {
        if (!amount.is_zero()) uses.push_back(phrase(amount, more...));
    };
    const CreditAmounts& pays = mix.pays;
    add(mix.off_price, of.goes_off_price);
    add(pays[CreditUse::points], of.goes_to_points, mix.rate, fixed(mix.points.value(), 3));
    add(pays[CreditUse::buydown], of.goes_to_buydown, buydown_name(mix.buydown));
    add(pays[CreditUse::upfront_fee], of.goes_to_upfront, fee_name(s, say));
    add(pays[CreditUse::closing_costs], of.goes_to_costs);
    add(pays[CreditUse::prepaids], of.goes_to_prepaids);
    return uses.empty() ? of.pays_nothing() : joined(uses);
}

Cautions cautions_of(const CreditAnswer& answer, const Catalogue& say) {
    const CreditWords& of = say.credit;
    Cautions notes{{CautionCode::money_on_top, of.money_on_top()},
                   {CautionCode::cost_spent_and_owed, of.cost_spent_and_owed()},
                   {CautionCode::money_with_conditions, of.money_with_conditions()}};
    if (std::any_of(answer.scenarios.begin(), answer.scenarios.end(),
                    [](const CreditScenario& s) { return !s.upfront_name.empty(); })) {
        notes.push_back({CautionCode::paid_in_cash, of.paid_in_cash()});
    }
    notes = with_loan_cautions(std::move(notes), answer.heading, terms_of(answer.scenarios), say);
    notes.push_back(agent_caution(say));
    return notes;
}

} // namespace quoin
