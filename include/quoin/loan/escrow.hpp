// The escrow account by the aggregate analysis of 12 CFR 1024.17: what is paid in at closing and
// each month, so that every bill of the year is met and the balance never falls under its cushion.
//
//   EscrowAccount a = analyse_escrow(bills, first_payment, 2);
//   a.deposit          each month: a twelfth of the year's bills, half away from zero to the cent
//   a.initial_deposit  what lifts the lowest month-end balance to zero, and the cushion on top
//   a.months           the month before the first payment, then twelve: Appendix E's table
//
// The computation year is the twelve calendar months from the first payment's. A bill that falls
// due before it is paid at closing and is none of the account's. In the balance of a month its
// payment is in and its bills are out, whichever day came first.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include <quoin/exact/date.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/lending/month_part.hpp>

namespace quoin {

/// The largest cushion is a sixth of the year's bills (12 CFR 1024.17(c)(1)).
inline constexpr int most_cushion_months = 2;
/// A smaller surplus may stay in the account (12 CFR 1024.17(f)(2)).
inline constexpr Money least_escrow_refund = Money::cents(50'00);

struct EscrowBill {
    MonthPart item = MonthPart::property_tax; ///< bills of one item are itemised together
    Money amount;
    Date due;
};

struct EscrowMonth {
    Date month; ///< its first day
    Money deposit;
    Money paid;
    Money balance; ///< at the month's end

    friend bool operator==(const EscrowMonth&, const EscrowMonth&) = default;
};

/// The month before the first payment, opened with `start`, then the computation year.
/// Precondition: every bill falls due in the year, and none is negative.
[[nodiscard]] std::vector<EscrowMonth> escrow_trial_balance(std::span<const EscrowBill> bills,
                                                            Date first_payment, Money start,
                                                            Money deposit);

struct EscrowAccount {
    Date first_payment;
    Money yearly;  ///< bills of the computation year
    Money deposit; ///< each month
    int cushion_months = 0;
    Money cushion; ///< its months' share of the year's bills, down to the cent: a most
    Money initial_deposit;
    std::vector<EscrowMonth> months; ///< thirteen
    int lowest = 0;                  ///< the first of `months` at the lowest balance: the cushion
};
/// Preconditions: those of the trial balance, and 0 <= cushion_months <= most_cushion_months.
[[nodiscard]] EscrowAccount analyse_escrow(std::span<const EscrowBill> bills, Date first_payment,
                                           int cushion_months);

/// A line of the initial deposit: months x the item's twelfth, half away from zero to the cent and
/// a cent at least.
struct EscrowLine {
    MonthPart item = MonthPart::property_tax;
    int months = 0;
    Money monthly;

    [[nodiscard]] Money total() const { return monthly * months; }
};
struct ItemisedEscrow {
    std::vector<EscrowLine> lines; ///< in the order the items first appear among the bills
    Money adjustment;              ///< aggregate adjustment, never positive
};
/// What brings the lines to the aggregate deposit.
[[nodiscard]] Money aggregate_adjustment(std::span<const EscrowLine> lines, Money initial_deposit);
/// The initial deposit item by item (12 CFR 1026.37(g)(3), 1026.38(g)(3)). An item has the whole
/// months that would carry it alone, and the cushion's. Where cents of rounding would still leave
/// the lines under the aggregate, the cheapest item takes one month more: an adjustment lowers.
[[nodiscard]] ItemisedEscrow itemise(const EscrowAccount& account,
                                     std::span<const EscrowBill> bills);

/// A computation year as it begins.
struct EscrowYear {
    Date first_payment;
    Money start;   ///< in the account
    Money payment; ///< into it each month
    int cushion_months = 0;
};

/// The analysis at the end of a computation year: what the account holds against what the next
/// year has to start with (12 CFR 1024.17(f)). At most one of surplus and shortage is there.
struct EscrowYearEnd {
    EscrowAccount next; ///< its initial_deposit is the target
    Money balance;      ///< may be negative
    Money surplus;
    Money refund; ///< all of a surplus of $50 or more, or that the payments have no room for
    Money credit; ///< a smaller one: a twelfth off each payment, down to the cent
    /// Missing to the target, a negative balance (a deficiency, 1024.17(f)(4)) among it.
    Money shortage;
    Money instalment; ///< shortage / 12, half away from zero to the cent

    /// Into escrow each month of the next year.
    [[nodiscard]] Money payment() const { return next.deposit + instalment - credit; }
    /// The next year as it begins, what is refunded gone from it.
    [[nodiscard]] EscrowYear following() const;
};
/// `paid` are the bills that came in the year; `next` those expected in the one after.
[[nodiscard]] EscrowYearEnd escrow_year_end(const EscrowYear& year,
                                            std::span<const EscrowBill> paid,
                                            std::span<const EscrowBill> next);

/// An account's first year as it was set, and the analyses that follow it.
struct EscrowOutlook {
    EscrowAccount first;
    std::vector<EscrowYearEnd> ends; ///< after the first year, the second ...

    /// What the monthly payment into escrow changes by after a year: 0 for the first.
    [[nodiscard]] Money change(std::size_t after) const;
};
/// Deposits set from `set_from`, bills that come by year: one analysis between any two years.
[[nodiscard]] EscrowOutlook escrow_outlook(std::span<const EscrowBill> set_from,
                                           const std::vector<std::vector<EscrowBill>>& years,
                                           Date first_payment, int cushion_months);

} // namespace quoin
