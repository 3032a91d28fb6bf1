// Reckoning what the credit costs.
#include <quoin/answers/cost_of_credit.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

constexpr int five_years = 60;

/// Principal and interest of each month, less what the buyer's buydown pays of it.
std::vector<Money> notes_payments(const LoanFigures& f, const BuyersBuydown& buydown) {
    std::vector<Money> payments = f.schedule.payments();
    for (std::size_t i = 0; i < payments.size(); ++i) {
        payments[i] -= buydown.in_month(static_cast<int>(i) + 1);
    }
    return payments;
}

std::vector<PaymentLevel> levels_of(const std::vector<Money>& payments) {
    std::vector<PaymentLevel> levels;
    const int last = static_cast<int>(payments.size());
    for (int month = 1; month < last; ++month) {
        const Money payment = payments[static_cast<std::size_t>(month) - 1];
        if (levels.empty() || levels.back().payment != payment) {
            levels.push_back({month, month, payment});
        }
        levels.back().to = month;
    }
    if (!levels.empty()) levels.back().to = last;
    ensure(levels.empty() || levels.front().from == 1, "levels begin with the first payment");
    return levels;
}

/// Interest over the loan, in percent to three decimals.
Percent total_interest_percentage(Money interest, Money loan) {
    if (loan <= Money{}) return {};
    const std::int64_t thousandths =
        multiply_divide(interest.count(), 100'000, loan.count(), Rounding::half_away);
    return Percent(Decimal::billionths(thousandths * (Decimal::one / 1000)));
}

/// Unchecked, since the schedule has summed them checked: 360 amounts for every scenario.
Money sum_of(const std::vector<Money>& payments) {
    std::int64_t cents = 0;
    for (const Money payment : payments) cents += payment.count();
    return Money::cents(cents);
}

void check(const CostOfCredit& cost, const LoanFigures& f) {
    ensure(cost.disclosed_principal_in_five_years <= f.schedule.balance(0),
           "no more principal is paid than is owed");
    ensure(f.schedule.months() > five_years ||
               cost.disclosed_principal_in_five_years == f.schedule.balance(0),
           "a loan of five years or less is paid in five years");
    ensure(cost.prepaid_finance_charge - f.cash[CashPart::closing_costs] <=
               std::max(f.cash[CashPart::points], Money{}) + f.upfront_fee +
                   f.cash[CashPart::prepaid_interest] + f.cash[CashPart::buydown],
           "finance charges of the buyer's costs are among these");
}

std::vector<Money> with_insurance(std::vector<Money> payments, const LoanFigures& f) {
    for (std::size_t i = 0; i < payments.size(); ++i) {
        payments[i] += f.insurance.in_month(static_cast<int>(i) + 1);
    }
    return payments;
}

} // namespace

Money BuyersBuydown::in_month(int month) const {
    const auto index = static_cast<std::size_t>((month - 1) / months_a_year);
    return index < monthly.size() ? monthly[index] : Money{};
}

Money BuyersBuydown::through(int month) const {
    Money sum;
    for (std::size_t i = 0; i < monthly.size(); ++i) {
        sum +=
            monthly[i] * std::clamp(month - months_a_year * static_cast<int>(i), 0, months_a_year);
    }
    return sum;
}

BuyersBuydown buyers_buydown(const LoanFigures& f) {
    BuyersBuydown own;
    own.put_up = f.cash[CashPart::buydown] - f.credits.by_use[CreditUse::buydown];
    if (!f.buydown || own.put_up <= Money{}) return {};
    const std::int64_t whole = f.buydown->total_subsidy().count();
    for (const BuydownYear& in_year : f.buydown->years) {
        own.monthly.push_back(Money::cents(multiply_divide(
            in_year.subsidy.count(), own.put_up.count(), whole, Rounding::half_away)));
    }
    return own;
}

std::vector<Money> disclosed_payments(const LoanFigures& f) {
    return with_insurance(notes_payments(f, buyers_buydown(f)), f);
}

CostOfCredit cost_of_credit(const ScenarioRules& rules, const LoanFigures& f) {
    CostOfCredit cost;
    cost.buydown = buyers_buydown(f);
    const int months = f.schedule.months();
    const Money points = std::max(f.cash[CashPart::points], Money{});
    const Money prepaid_interest = f.prepaid_interest.total();
    const Money loan_costs = rules.closing_costs.loan_costs(f.loan, f.price) + points +
                             f.upfront_fee + cost.buydown.put_up;
    const Money insurance = f.insurance.paid_through(months);
    const Money interest = f.schedule.total_interest() - cost.buydown.through(months);
    cost.prepaid_finance_charge = points - f.credits.sellers_points + f.upfront_fee +
                                  rules.closing_costs.finance_charges(f.loan, f.price) +
                                  prepaid_interest + cost.buydown.put_up;
    const Money owed = f.schedule.balance(0); // less what reduces the principal at closing
    cost.amount_financed = owed - cost.prepaid_finance_charge;
    cost.finance_charge = interest + insurance + cost.prepaid_finance_charge;
    cost.total_of_payments =
        owed + interest + insurance + loan_costs - f.credits.sellers_points + prepaid_interest;
    cost.disclosed_in_five_years =
        f.schedule.paid_through(five_years) - cost.buydown.through(five_years) +
        f.insurance.paid_through(five_years) + loan_costs + prepaid_interest;
    cost.disclosed_principal_in_five_years = owed - f.schedule.balance(five_years);
    cost.total_interest_percentage = total_interest_percentage(interest + prepaid_interest, f.loan);
    const std::vector<Money> payments = notes_payments(f, cost.buydown);
    if (!cost.buydown.monthly.empty()) cost.levels = levels_of(payments);
    cost.first_period = first_period(rules.closing, rules.first_payment);
    const std::vector<Money> disclosed = with_insurance(payments, f);
    ensure_equal(sum_of(disclosed), cost.amount_financed + cost.finance_charge,
                 "amount financed and finance charge make the payments (12 CFR 1026.18(h))");
    cost.apr = annual_percentage_rate(cost.amount_financed, disclosed, cost.first_period);
    check(cost, f);
    return cost;
}

} // namespace quoin
