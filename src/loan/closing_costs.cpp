// Closing costs of a place and a lender.
#include <quoin/loan/closing_costs.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

constexpr Rounding nearest_cent = Rounding::half_away;

/// The charge of tiers on an amount: each tier on its own stretch, to the cent.
Money tiered(const std::vector<Tier>& tiers, Money amount) {
    Money sum;
    Money covered;
    for (const Tier& tier : tiers) {
        const Money end = tier.up_to ? std::min(amount, *tier.up_to) : amount;
        if (end <= covered) break;
        sum += per_thousand_of(end - covered, tier.per_thousand, nearest_cent);
        covered = end;
    }
    return sum;
}

Money full_amount(const ClosingCost& cost, Money base) {
    return cost.amount + percent_of(base, cost.percent, nearest_cent) +
           per_thousand_of(base, cost.per_thousand, nearest_cent) + tiered(cost.tiers, base);
}

} // namespace

Money amount_of(const ClosingCost& cost, const CostCase& on) {
    const Money base = cost.base == CostBase::loan ? on.loan : on.price;
    if (!cost.simultaneous || !on.owner_policy) return full_amount(cost, base);
    // The owner's policy covers the price; only a loan above it adds to the lender's policy.
    const Money above = full_amount(cost, base) - full_amount(cost, std::min(base, on.price));
    ensure(above >= Money{}, "a larger loan's title policy costs no less");
    return *cost.simultaneous + above;
}

ClosingCosts::ClosingCosts(const std::vector<ClosingCost>& of_place,
                           const std::vector<ClosingCost>& of_lender) {
    for (const auto* list : {&of_lender, &of_place}) {
        for (const ClosingCost& cost : *list) {
            all_.push_back(&cost);
            owner_policy_ = owner_policy_ || cost.policy == TitlePolicy::owner;
        }
    }
}

Money ClosingCosts::buyers(Money loan, Money price) const {
    const CostCase where = on(loan, price);
    Money sum;
    for (const ClosingCost* cost : all_) {
        if (cost->paid_by == PaidBy::buyer) sum += amount_of(*cost, where);
    }
    return sum;
}

Money ClosingCosts::loan_costs(Money loan, Money price) const {
    const CostCase where = on(loan, price);
    Money sum;
    for (const ClosingCost* cost : all_) {
        const bool of_loan = cost->section == CostSection::origination ||
                             cost->section == CostSection::not_shopped_for ||
                             cost->section == CostSection::shopped_for;
        if (cost->paid_by == PaidBy::buyer && of_loan) sum += amount_of(*cost, where);
    }
    return sum;
}

Money ClosingCosts::finance_charges(Money loan, Money price) const {
    const CostCase where = on(loan, price);
    Money sum;
    for (const ClosingCost* cost : all_) {
        if (cost->paid_by == PaidBy::buyer && cost->finance_charge) sum += amount_of(*cost, where);
    }
    return sum;
}

} // namespace quoin
