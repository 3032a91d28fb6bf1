// HUD's annual premium, per 24 CFR 203.261 and HUD's premium calculation: average of the
// beginning-of-month balances of the year x rate, to the cent; / (1 + upfront percent if financed),
// to the cent; / 12, to the cent.
//
// HUD runs the level payment of the total loan by its own interest: balance x percent to the cent,
// / 1200 to the cent. It is the note's own schedule: prepayments do not count (12 USC
// 1709(c)(2)(B)).
#include <algorithm>

#include <quoin/loan/level_payment.hpp>

#include "../rounded_interest.hpp"
#include "year_average.hpp"

namespace quoin {
namespace {

/// HUD's interest of a month: balance x percent to the cent, then / 1200 to the cent.
Money hud_interest(Money balance, Rate rate) {
    const std::int64_t twelve_hundredfold =
        multiply_divide(balance.count(), rate.millionths(), 1'000'000, Rounding::half_away);
    return Money::cents(
        divide_rounded<std::int64_t>(twelve_hundredfold, 1200, Rounding::half_away));
}

/// The same as one division. For whole m and n, floor((floor(y) + m) / n) = floor((y + m) / n), so
/// floor((floor(bu / M + 1/2) + 600) / 1200) = floor((bu + M/2 + 600 M) / 1200 M), M a million.
constexpr std::uint64_t hud_offset = 500'000 + 600'000'000;

bool fits_one_division(Money loan, Money payment, Rate rate) {
    return loan.count() <= static_cast<std::int64_t>(RoundedInterest::largest_balance) &&
           hud_interest(loan, rate) <= payment;
}

/// Runs `loan` down under `interest` for up to `last` months, in whole loan years.
template <class Interest>
std::vector<YearAverage> years_of_balances(Money loan, Money payment, int last, Interest interest) {
    std::vector<YearAverage> years(
        static_cast<std::size_t>((last + months_a_year - 1) / months_a_year));
    Money balance = loan;
    int month = 0;
    for (YearAverage& in_year : years) {
        for (const int end = std::min(month + months_a_year, last);
             month < end && balance > Money{}; ++month) {
            in_year.add(balance);
            balance = balance + interest(balance) - payment;
        }
    }
    while (!years.empty() && years.back().months == 0) years.pop_back();
    return years;
}

std::vector<YearAverage> hud_balances(const LoanTerms& terms, int last) {
    const Money payment = level_payment(terms.loan, terms.rate, terms.term);
    if (!fits_one_division(terms.loan, payment, terms.rate)) {
        return years_of_balances(terms.loan, payment, last,
                                 [&](Money balance) { return hud_interest(balance, terms.rate); });
    }
    const RoundedInterest interest(terms.rate, hud_offset);
    return years_of_balances(terms.loan, payment, last, [&](Money balance) {
        return Money::cents(
            static_cast<std::int64_t>(interest(static_cast<std::uint64_t>(balance.count()))));
    });
}

/// A year is averaged whole, though its premium may end within it.
int through_whole_year(int months, int term) {
    return std::min((months + months_a_year - 1) / months_a_year * months_a_year, term);
}

int months_in(const std::vector<YearAverage>& years) {
    return years.empty()
               ? 0
               : months_a_year * (static_cast<int>(years.size()) - 1) + years.back().months;
}

MonthlyPremium premium(const LoanTerms& note, Percent yearly, Percent upfront, int months) {
    const auto years = hud_balances(note, through_whole_year(months, note.term.count()));
    const std::int64_t with_upfront = (hundred_percent + upfront).value().billionths();
    std::vector<Money> monthly;
    monthly.reserve(years.size());
    for (const YearAverage& in_year : years) {
        const std::int64_t base =
            multiply_divide(in_year.premium(yearly).count(), hundred_percent.value().billionths(),
                            with_upfront, Rounding::half_away);
        monthly.push_back(part_of(Money::cents(base), months_a_year, Rounding::half_away));
    }
    return {std::move(monthly), std::min(months, months_in(years))};
}

MonthlyPremium charge(const AnnualBasis& of) {
    return premium(of.note, of.yearly, of.upfront, of.months);
}

/// Balances rise with the loan and with the rate, and so does an average of them.
Money least(const LeastAnnualBasis& of) {
    return premium(of.note, of.yearly, of.most_upfront,
                   std::min(months_a_year, of.note.term.count()))
        .in_month(1);
}

Formula proof(const YearRows& rows) {
    const Formula with_upfront = number(1) + figure("upfront_in_loan") / number(100);
    return to_cent(to_cent(average_premium(ScheduleColumn::hud_balance, rows) / with_upfront) /
                   number(months_a_year));
}

Formula hud_balance(int before) {
    const Formula balance = column_at(ScheduleColumn::hud_balance, before);
    const Formula interest = to_cent(to_cent(balance * figure("note_rate")) / number(1200));
    return greatest_of({to_cent(balance + interest - figure("principal_and_interest")), number(0)});
}

} // namespace

const AnnualMethod hud_average_balance{.name = "hud average balance",
                                       .rounding = 15,
                                       .charge = charge,
                                       .least = least,
                                       .proof = proof,
                                       .hud_balance = hud_balance};

} // namespace quoin
