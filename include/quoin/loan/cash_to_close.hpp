// CashToClose: what has to be brought, and what has been brought already, by its parts.
//
//   f.cash[CashPart::down_payment]
//   f.cash.needed()
#pragma once

#include <algorithm>
#include <array>
#include <span>
#include <string_view>

#include <quoin/exact/amounts.hpp>

namespace quoin {

/// In the order in which the parts are told.
enum class CashPart {
    down_payment,
    upfront_fee,         ///< the part that is not financed, or a single premium
    points,              ///< negative: a lender credit, as far as it is not lost
    principal_reduction, ///< at closing, out of the lender credit
    closing_costs,       ///< the buyer's
    prepaid_interest,
    prepaid_bills, ///< insurance premiums, and tax due before the first payment
    escrow,        ///< initial escrow deposit
    buydown,       ///< subsidy of a temporary buydown
    credits,       ///< used
    deposits,      ///< earnest money and option deposits
};

/// What a part is of.
///
/// A lender credit for a higher rate pays closing costs and prepaids, never the down payment
/// (Fannie Mae SEL-2018-03; HUD Reference Guide 2-06, premium pricing). What is left of it reduces
/// the principal at closing where the program's policy says so, on the note and the
/// payment as they are; elsewhere it is lost.
enum class CashGroup {
    needed,
    open_to_lender_credit, ///< needed too
    paid_before,           ///< of what is needed, paid before the closing
};

struct CashPartRow {
    CashPart part;
    std::string_view code; ///< in answers
    std::string_view name; ///< for people
    int sign;              ///< -1: it lessens what is still to bring
    CashGroup group;
};

inline constexpr auto cash_parts = std::to_array<CashPartRow>({
    {CashPart::down_payment, "down_payment", "down payment", 1, CashGroup::needed},
    {CashPart::upfront_fee, "upfront_fee_in_cash", "upfront fee, in cash", 1, CashGroup::needed},
    {CashPart::points, "points", "points (credit if minus)", 1, CashGroup::needed},
    {CashPart::principal_reduction, "principal_reduction", "principal reduced", 1,
     CashGroup::needed},
    {CashPart::closing_costs, "closing_costs", "closing costs", 1,
     CashGroup::open_to_lender_credit},
    {CashPart::prepaid_interest, "prepaid_interest", "prepaid interest", 1,
     CashGroup::open_to_lender_credit},
    {CashPart::prepaid_bills, "prepaid_bills", "prepaid bills", 1,
     CashGroup::open_to_lender_credit},
    {CashPart::escrow, "initial_escrow_deposit", "escrow, first deposit", 1,
     CashGroup::open_to_lender_credit},
    {CashPart::buydown, "temporary_buydown", "temporary buydown", 1, CashGroup::needed},
    {CashPart::credits, "credits", "credits", -1, CashGroup::needed},
    {CashPart::deposits, "deposits", "less deposits", -1, CashGroup::paid_before},
});
static_assert(std::all_of(cash_parts.begin(), cash_parts.end(),
                          [](const CashPartRow& row) {
                              return &cash_parts[static_cast<std::size_t>(row.part)] == &row;
                          }),
              "the rows stand in the order of the parts");
inline constexpr std::size_t needed_count = static_cast<std::size_t>(
    std::count_if(cash_parts.begin(), cash_parts.end(),
                  [](const CashPartRow& row) { return row.group != CashGroup::paid_before; }));
/// The rows of what is needed, and of what of it is paid before the closing.
inline constexpr auto needed_parts = std::span(cash_parts).first(needed_count);
inline constexpr auto paid_before_parts = std::span(cash_parts).subspan(needed_count);
static_assert(std::all_of(paid_before_parts.begin(), paid_before_parts.end(),
                          [](const CashPartRow& row) {
                              return row.group == CashGroup::paid_before;
                          }),
              "what is paid before the closing stands last");

struct CashToClose : Amounts<CashPart, cash_parts.size()> {
    /// All the cash the purchase takes.
    [[nodiscard]] constexpr Money needed() const {
        return sum([](CashGroup group) { return group != CashGroup::paid_before; });
    }
    /// What a lender credit may pay.
    [[nodiscard]] constexpr Money open_to_lender_credit() const {
        return sum([](CashGroup group) { return group == CashGroup::open_to_lender_credit; });
    }
    /// What is left to bring to the closing.
    [[nodiscard]] constexpr Money to_close() const {
        return sum([](CashGroup) { return true; });
    }

  private:
    template <class Counts>
    [[nodiscard]] constexpr Money sum(const Counts& counts) const {
        Money all;
        for (const CashPartRow& row : cash_parts) {
            if (counts(row.group)) all += (*this)[row.part] * row.sign;
        }
        return all;
    }
};

} // namespace quoin
