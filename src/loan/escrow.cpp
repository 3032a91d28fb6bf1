// Trial balances of an escrow account, and what follows from the lowest of them.
#include <quoin/loan/escrow.hpp>

#include <algorithm>
#include <iterator>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

/// 1 for the month of the first payment.
int month_of_year(Date due, Date first_payment) {
    return (due.year() - first_payment.year()) * months_a_year + static_cast<int>(due.month()) -
           static_cast<int>(first_payment.month()) + 1;
}

Money sum_of(std::span<const EscrowBill> bills) {
    Money sum;
    for (const EscrowBill& bill : bills) sum += bill.amount;
    return sum;
}

Money twelfth(Money yearly) { return part_of(yearly, months_a_year, Rounding::half_away); }

std::vector<EscrowMonth>::const_iterator lowest_of(const std::vector<EscrowMonth>& months) {
    return std::min_element(
        months.begin(), months.end(),
        [](const EscrowMonth& a, const EscrowMonth& b) { return a.balance < b.balance; });
}

std::vector<EscrowBill> bills_of(MonthPart item, std::span<const EscrowBill> bills) {
    std::vector<EscrowBill> found;
    std::copy_if(bills.begin(), bills.end(), std::back_inserter(found),
                 [&](const EscrowBill& bill) { return bill.item == item; });
    return found;
}

/// The whole months of an item's own twelfth, unrounded, that its lowest balance asks for. Counted
/// on twelve times the bills, whose twelfth is whole to the cent, so that no cent of rounding asks
/// for a month.
int months_to_carry(std::vector<EscrowBill> bills, Date first_payment) {
    const Money yearly = sum_of(bills);
    ensure(yearly > Money{}, "an item of an escrow account has something to pay");
    for (EscrowBill& bill : bills) bill.amount = bill.amount * months_a_year;
    const auto months = escrow_trial_balance(bills, first_payment, {}, yearly);
    const Money missing = -lowest_of(months)->balance;
    return static_cast<int>(divide_rounded(missing.count(), yearly.count(), Rounding::up));
}

EscrowLine line_of(MonthPart item, const EscrowAccount& account,
                   std::span<const EscrowBill> bills) {
    const std::vector<EscrowBill> of_item = bills_of(item, bills);
    const int carry = months_to_carry(of_item, account.first_payment);
    return {item, carry + account.cushion_months,
            std::max(twelfth(sum_of(of_item)), Money::cents(1))};
}

/// Adds months to the cheapest line until the lines cover the aggregate.
void cover(std::vector<EscrowLine>& lines, Money initial_deposit) {
    const Money lacking = aggregate_adjustment(lines, initial_deposit);
    if (lacking <= Money{}) return;
    const auto cheapest =
        std::min_element(lines.begin(), lines.end(), [](const EscrowLine& a, const EscrowLine& b) {
            return a.monthly < b.monthly;
        });
    ensure(cheapest != lines.end(), "an escrow deposit has an item");
    cheapest->months +=
        static_cast<int>(divide_rounded(lacking.count(), cheapest->monthly.count(), Rounding::up));
}

} // namespace

std::vector<EscrowMonth> escrow_trial_balance(std::span<const EscrowBill> bills, Date first_payment,
                                              Money start, Money deposit) {
    const Date before = plus_months(first_of_month(first_payment), Months(-1));
    std::vector<EscrowMonth> months;
    months.reserve(months_a_year + 1);
    months.push_back({before, start, {}, {}});
    for (int month = 1; month <= months_a_year; ++month) {
        months.push_back({plus_months(before, Months(month)), deposit, {}, {}});
    }
    for (const EscrowBill& bill : bills) {
        const int month = month_of_year(bill.due, first_payment);
        ensure(1 <= month && month <= months_a_year,
               "an escrow bill falls due in the computation year");
        ensure(bill.amount >= Money{}, "an escrow bill is not negative");
        months[static_cast<std::size_t>(month)].paid += bill.amount;
    }
    Money balance;
    for (EscrowMonth& month : months) month.balance = balance += month.deposit - month.paid;
    return months;
}

EscrowAccount analyse_escrow(std::span<const EscrowBill> bills, Date first_payment,
                             int cushion_months) {
    ensure(0 <= cushion_months && cushion_months <= most_cushion_months,
           "an escrow cushion is of zero to two months");
    EscrowAccount account{first_payment, sum_of(bills), {}, cushion_months, {}, {}, {}, 0};
    account.deposit = twelfth(account.yearly);
    account.cushion = part_of(account.yearly * cushion_months, months_a_year, Rounding::down);
    account.months = escrow_trial_balance(bills, first_payment, {}, account.deposit);
    account.initial_deposit = account.cushion - lowest_of(account.months)->balance;
    account.months.front().deposit = account.initial_deposit;
    for (EscrowMonth& month : account.months) month.balance += account.initial_deposit;
    const auto lowest = lowest_of(account.months);
    ensure_equal(lowest->balance, account.cushion,
                 "an escrow balance falls to its cushion, not under");
    ensure_equal(account.months.back().balance,
                 account.initial_deposit + account.deposit * months_a_year - account.yearly,
                 "an escrow balance is what came in less what was paid");
    account.lowest = static_cast<int>(lowest - account.months.begin());
    return account;
}

Money aggregate_adjustment(std::span<const EscrowLine> lines, Money initial_deposit) {
    Money adjustment = initial_deposit;
    for (const EscrowLine& line : lines) adjustment -= line.total();
    return adjustment;
}

ItemisedEscrow itemise(const EscrowAccount& account, std::span<const EscrowBill> bills) {
    ItemisedEscrow itemised;
    std::vector<EscrowLine>& lines = itemised.lines;
    for (const EscrowBill& bill : bills) {
        const bool listed = std::any_of(lines.begin(), lines.end(), [&](const EscrowLine& line) {
            return line.item == bill.item;
        });
        if (!listed && !bill.amount.is_zero()) lines.push_back(line_of(bill.item, account, bills));
    }
    cover(lines, account.initial_deposit);
    itemised.adjustment = aggregate_adjustment(lines, account.initial_deposit);
    ensure(itemised.adjustment <= Money{}, "an aggregate adjustment is not positive");
    return itemised;
}

EscrowYear EscrowYearEnd::following() const {
    return {next.first_payment, balance - refund, payment(), next.cushion_months};
}

EscrowYearEnd escrow_year_end(const EscrowYear& of, std::span<const EscrowBill> paid,
                              std::span<const EscrowBill> next) {
    EscrowYearEnd end;
    end.balance = escrow_trial_balance(paid, of.first_payment, of.start, of.payment).back().balance;
    end.next = analyse_escrow(next, plus_months(of.first_payment, Months(months_a_year)),
                              of.cushion_months);
    const Money over = end.balance - end.next.initial_deposit;
    if (over < Money{}) {
        end.shortage = -over;
        end.instalment = twelfth(end.shortage);
        return end;
    }
    end.surplus = over;
    const Money credit = part_of(over, months_a_year, Rounding::down);
    const bool refunded = over >= least_escrow_refund || credit > end.next.deposit;
    (refunded ? end.refund : end.credit) = refunded ? over : credit;
    ensure(end.payment() >= Money{}, "an escrow surplus leaves no payment under zero");
    return end;
}

Money EscrowOutlook::change(std::size_t after) const {
    const Money before = after == 0 ? first.deposit : ends.at(after - 1).payment();
    return ends.at(after).payment() - before;
}

EscrowOutlook escrow_outlook(std::span<const EscrowBill> set_from,
                             const std::vector<std::vector<EscrowBill>>& years, Date first_payment,
                             int cushion_months) {
    EscrowOutlook outlook{analyse_escrow(set_from, first_payment, cushion_months), {}};
    EscrowYear now{first_payment, outlook.first.initial_deposit, outlook.first.deposit,
                   cushion_months};
    for (std::size_t i = 1; i < years.size(); ++i) {
        outlook.ends.push_back(escrow_year_end(now, years[i - 1], years[i]));
        now = outlook.ends.back().following();
    }
    return outlook;
}

} // namespace quoin
