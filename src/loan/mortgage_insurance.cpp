// What mortgage insurance costs each month, and the payment that ends it.
#include <quoin/loan/mortgage_insurance.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

bool has_balance_at_most(Money balance, Money value, int percent) {
    return Int128{balance.count()} * 100 <= Int128{value.count()} * percent;
}

/// The first payment, or 0 for the loan itself, that leaves at most `percent` of `value`.
int first_at_most(const Schedule& schedule, Money value, int percent) {
    int month = 0;
    while (month < schedule.months() &&
           !has_balance_at_most(schedule.balance(month), value, percent)) {
        ++month;
    }
    return month;
}

} // namespace

MonthlyPremium::MonthlyPremium(std::vector<Money> yearly, int months)
    : yearly_(std::move(yearly)), months_(months) {
    ensure(months >= 0 && (months == 0 || !yearly_.empty()),
           "a premium that is paid has an amount");
}

Money MonthlyPremium::in_month(int month) const {
    if (month < 1 || month > months_) return Money{};
    const auto index = static_cast<std::size_t>((month - 1) / months_a_year);
    return yearly_[std::min(index, yearly_.size() - 1)];
}

Money MonthlyPremium::paid_through(int month) const {
    const int last = std::min(month, months_);
    Money paid;
    for (int first = 1; first <= last; first += months_a_year) {
        paid += in_month(first) * std::min(months_a_year, last - first + 1);
    }
    return paid;
}

MonthlyPremium MonthlyPremium::ended_by(int last) const {
    MonthlyPremium ended = *this;
    ended.months_ = std::min(months_, last);
    return ended;
}

InsuranceEnd insurance_end(const Schedule& initial, const Schedule& paid, Money value) {
    const InsuranceEnd end{first_at_most(paid, value, 80), first_at_most(initial, value, 78),
                           (initial.terms().term.count() + 1) / 2};
    ensure(end.on_request <= end.automatic || initial.steps().size() > 1,
           "insurance that is asked off ends no later than it does by itself");
    return end;
}

} // namespace quoin
