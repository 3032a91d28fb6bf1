// Credits: money that others give towards a purchase, what each may pay, and what finds no use.
//
// A credit never pays more than there is to pay. Credits of interested parties (builder, seller)
// are held to the program's contribution cap; a lender's and a program's are not. VA's cap is on
// concessions: closing costs and market points do not count towards it, prepaids, the funding fee
// and a temporary buydown do (VA Lenders Handbook, chapter 8).
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include <quoin/exact/amounts.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

enum class CreditFrom { builder, seller, lender, program };
[[nodiscard]] constexpr bool is_interested_party(CreditFrom from) {
    return from == CreditFrom::builder || from == CreditFrom::seller;
}

/// What a credit may pay, in the order in which it is used.
enum class CreditUse { points, buydown, closing_costs, prepaids, upfront_fee, down_payment };
template <>
inline constexpr auto codes<CreditUse> =
    coded<CreditUse>({{CreditUse::points, "points"},
                      {CreditUse::buydown, "temporary_buydown", "temporary buydown"},
                      {CreditUse::upfront_fee, "upfront_fee", "upfront fee"},
                      {CreditUse::closing_costs, "closing_costs", "closing costs"},
                      {CreditUse::prepaids, "prepaids"},
                      {CreditUse::down_payment, "down_payment", "down payment"}});
inline constexpr std::array credit_uses{CreditUse::points,        CreditUse::buydown,
                                        CreditUse::closing_costs, CreditUse::prepaids,
                                        CreditUse::upfront_fee,   CreditUse::down_payment};
/// Whether what an interested party pays is a concession: not closing costs, nor points (VA Lenders
/// Handbook, chapter 8).
[[nodiscard]] constexpr bool is_concession(CreditUse use) {
    return use == CreditUse::prepaids || use == CreditUse::buydown || use == CreditUse::upfront_fee;
}
/// Whether it is a finance charge that is none where a seller pays it: seller's points, and what
/// is treated like them (12 CFR 1026.4(c)(5), comment 4(c)(5)-2).
[[nodiscard]] constexpr bool is_sellers_points(CreditUse use) {
    return use == CreditUse::points || use == CreditUse::upfront_fee;
}

using CreditAmounts = Amounts<CreditUse, credit_uses.size()>;

struct Credit {
    std::string name;
    CreditFrom from = CreditFrom::builder;
    Money amount;
    std::vector<CreditUse> uses; ///< at least one

    [[nodiscard]] bool may_pay(CreditUse use) const;
    friend bool operator==(const Credit&, const Credit&) = default;
};

/// How one credit was used: paid, without use and over the cap make its amount.
struct CreditUsed {
    CreditAmounts by_use;
    Money without_use;
    Money over_cap;
};

/// How credits were used.
struct CreditsUsed {
    CreditAmounts by_use;
    Money interested_parties; ///< of all that is used, what counts towards the cap
    Money sellers_points;     ///< points and upfront fees that interested parties pay
    Money without_use;        ///< there was nothing it may pay
    Money over_cap;           ///< without the cap it would have been paid
    CreditUsed last;          ///< the last credit alone: what is left to it by those before
};

/// Uses credits in their order. `room` is what there is to pay; `cap` the most that interested
/// parties may give, of concessions alone or of all.
[[nodiscard]] CreditsUsed use_credits(const std::vector<const Credit*>& credits, CreditAmounts room,
                                      std::optional<Money> cap, bool concessions_alone);

} // namespace quoin
