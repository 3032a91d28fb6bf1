// Reading a closing cost.
#include <quoin/lending/closing_cost.hpp>

#include <quoin/lending/reading.hpp>
#include <quoin/text/problems.hpp>

#include "not_negative.hpp"

namespace quoin {
namespace {

const Words<CostBase> cost_base_words = {{CostBase::loan, "loan"}, {CostBase::price, "price"}};
const Words<TitlePolicy> policy_words = {
    {TitlePolicy::none, "none"}, {TitlePolicy::owner, "owner"}, {TitlePolicy::lender, "lender"}};
const Words<bool> when_words = {{false, "at closing"}, {true, "before closing"}};

std::vector<Tier> read_tiers(Reader& item) {
    std::vector<Tier> tiers;
    item.each("tiers", [&](Reader& reader) {
        const Tier tier{reader.maybe_money("up_to"),
                        not_negative(reader, "per_thousand", reader.decimal("per_thousand"))};
        const Money before = tiers.empty() ? Money{} : tiers.back().up_to.value_or(Money{});
        const bool after_all = !tiers.empty() && !tiers.back().up_to;
        if (after_all || (tier.up_to && *tier.up_to <= before)) {
            reader.report(problems::tiers_not_rising(reader.here()));
        }
        tiers.push_back(tier);
    });
    return tiers;
}

/// How a cost is stated: exactly one of these members.
struct Form {
    std::string_view key;
    CostBase base;
};
constexpr Form percent_forms[] = {{"percent_of_loan", CostBase::loan},
                                  {"percent_of_price", CostBase::price}};
constexpr Form thousand_forms[] = {{"per_thousand_of_loan", CostBase::loan},
                                   {"per_thousand_of_price", CostBase::price}};

/// Reads whichever of the forms is there; counts them.
Decimal read_form(Reader& item, const Form (&forms)[2], ClosingCost& cost, int& given) {
    Decimal value;
    for (const Form& form : forms) {
        const auto found = not_negative(item, form.key, item.maybe_decimal(form.key));
        if (!found) continue;
        value = *found;
        cost.base = form.base;
        ++given;
    }
    return value;
}

void read_size(Reader& item, ClosingCost& cost) {
    int given = 0;
    if (const auto amount = not_negative(item, "amount", item.maybe_money("amount"))) {
        cost.amount = *amount;
        ++given;
    }
    cost.percent = Percent(read_form(item, percent_forms, cost, given));
    cost.per_thousand = read_form(item, thousand_forms, cost, given);
    if (item.has("tiers")) {
        cost.tiers = read_tiers(item);
        cost.base = item.word("of", cost_base_words);
        ++given;
    }
    if (given == 1) return;
    item.report(problems::cost_amount_unclear(item.here()));
}

} // namespace

ClosingCost read_closing_cost(Reader& item) {
    ClosingCost cost;
    cost.name = item.name("name");
    cost.section = item.word<CostSection>("section");
    read_size(item, cost);
    cost.policy = item.word_or("title_policy", policy_words, TitlePolicy::none);
    cost.simultaneous = not_negative(item, "simultaneous", item.maybe_money("simultaneous"));
    if (cost.simultaneous && cost.policy != TitlePolicy::lender) {
        item.report(problems::simultaneous_without_policy(item.here()));
    }
    cost.finance_charge = item.flag_or("finance_charge", false);
    cost.before_closing = item.word_or("paid", when_words, false);
    cost.paid_by = item.word_or("paid_by", PaidBy::buyer);
    return cost;
}

} // namespace quoin
