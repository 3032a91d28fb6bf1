// ClosingCost: one cost of closing, as a place or a lender's sheet states it.
//
// Its size is a flat amount, a percent or a price per thousand of the loan or the price, or tiers
// per thousand. A lender's title policy issued together with an owner's may cost a flat amount for
// what the owner's covers (the simultaneous-issue rate).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

/// The sections of 12 CFR 1026.37(f), (g) and 1026.38(f), (g) that hold such costs.
enum class CostSection {
    origination,
    not_shopped_for,
    shopped_for,
    taxes_and_government,
    other,
};
template <>
inline constexpr auto codes<CostSection> = coded<CostSection>(
    {{CostSection::origination, "origination"},
     {CostSection::not_shopped_for, "not_shopped_for", "services not shopped for"},
     {CostSection::shopped_for, "shopped_for", "services shopped for"},
     {CostSection::taxes_and_government, "taxes_and_government", "taxes and government fees"},
     {CostSection::other, "other"}});

enum class CostBase { loan, price };
enum class PaidBy { buyer, seller, lender };
template <>
inline constexpr auto codes<PaidBy> = coded<PaidBy>({{PaidBy::buyer, "buyer"},
                                                     {PaidBy::seller, "seller"},
                                                     {PaidBy::lender, "lender"}});

/// Dollars for each thousand of the base up to an amount, after what earlier tiers covered.
struct Tier {
    std::optional<Money> up_to; ///< nothing: all the rest
    Decimal per_thousand;
};

enum class TitlePolicy { none, owner, lender };

struct ClosingCost {
    std::string name;
    CostSection section = CostSection::other;
    CostBase base = CostBase::price; ///< of percent, per_thousand and tiers
    Money amount;
    Percent percent;
    Decimal per_thousand;
    std::vector<Tier> tiers;
    TitlePolicy policy = TitlePolicy::none;
    std::optional<Money> simultaneous; ///< lender's policy beside an owner's
    bool finance_charge = false;       ///< counts in the APR (12 CFR 1026.4)
    bool before_closing = false;       ///< paid when ordered, such as an appraisal
    PaidBy paid_by = PaidBy::buyer;
};

} // namespace quoin
