// The words of a builder's money.
#include "credit_words.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "own_cautions.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {

std::string use_name(const CreditPure& pure, const CreditScenario& s) {
    if (pure.way != CreditWay::upfront_fee || s.upfront_name.empty()) {
        return std::string(name_of(pure.way));
    }
    return s.upfront_name + ", in cash";
}

std::string buydown_name(const std::vector<Percent>& steps) {
    if (steps.empty()) return "none";
    std::string name;
    for (const Percent step : steps) name += (name.empty() ? "" : "-") + step.value().text();
    return steps.size() == 1 ? name + "-0" : name;
}

std::string why_not(const CreditPure& pure, const CreditAsk& ask) {
    if (pure.needed > ask.amount) return "takes " + dollars(pure.needed);
    if (!pure.needed.is_zero()) {
        return fmt::format("takes {}, more than the cap leaves", dollars(pure.needed));
    }
    return pure.way == CreditWay::points ? "no lower rate to be had" : "not with this loan";
}

Cautions cautions_of(const CreditAnswer& answer, const Catalogue& say) {
    Cautions notes{
        {CautionCode::money_on_top,
         "The money comes on top of the incentives and credits that the inquiry uses already, and "
         "the cap is on all of them together. It pays points first, then the buydown, closing "
         "costs, prepaids, a fee or premium in cash; never a down payment. In no mix does the "
         "buyer put more of their own into costs and points than without it. Money that options "
         "are credited with makes the price less and is reckoned as off the price."},
        {CautionCode::cost_spent_and_owed,
         "Cost is what has been spent and is still owed: cash, payments less what a buydown "
         "pays of them, insurance, taxes, dues, and the balance. The month is the settled one, "
         "now and after three years. Money off the price comes in whole dollars; between the "
         "amounts told the figures run evenly."},
        {CautionCode::money_with_conditions,
         "Where such money depends on a lender, a title company or a date, its conditions say so. "
         "You may choose any lender, and then may have to go without it: compare the whole cost."}};
    if (std::any_of(answer.scenarios.begin(), answer.scenarios.end(),
                    [](const CreditScenario& s) { return !s.upfront_name.empty(); })) {
        notes.push_back({CautionCode::paid_in_cash,
                         "An upfront fee in cash is not borrowed, and so bears no interest. A "
                         "single premium takes the place of the month's insurance: whether any "
                         "of it comes back when the loan ends early is in its certificate."});
    }
    notes = with_loan_cautions(std::move(notes), answer.heading, terms_of(answer.scenarios));
    notes.push_back(agent_caution(say));
    return notes;
}

} // namespace quoin
