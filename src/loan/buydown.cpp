// Temporary buydowns: their rules, and what each month costs whom.
#include <quoin/loan/buydown.hpp>

#include <algorithm>
#include <optional>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/level_payment.hpp>

namespace quoin {
namespace {

std::optional<Rate> reduced(Rate note, Percent reduction) {
    return Rate::percent(note.percent() - reduction.value());
}

bool is_too_fine_a_step(Percent reduction) { return reduction.value().billionths() % 1000 != 0; }

/// How much the rate rises after each year, the last one's step to the note rate among them.
std::vector<Percent> rises(std::span<const Percent> reductions) {
    std::vector<Percent> steps;
    for (std::size_t i = 0; i < reductions.size(); ++i) {
        const Percent after = i + 1 < reductions.size() ? reductions[i + 1] : Percent{};
        steps.push_back(reductions[i] - after);
    }
    return steps;
}

} // namespace

std::vector<BuydownProblem> buydown_problems(const LoanTerms& note,
                                             std::span<const Percent> reductions) {
    std::vector<BuydownProblem> problems;
    const auto add_where = [&](bool stands, BuydownProblem problem) {
        if (stands) problems.push_back(problem);
    };
    const auto any = [](const auto& list, auto is) {
        return std::any_of(list.begin(), list.end(), is);
    };
    const auto count = static_cast<std::int64_t>(reductions.size());
    const std::vector<Percent> steps = rises(reductions);
    using enum BuydownProblem;
    add_where(reductions.empty(), no_years);
    add_where(count > most_buydown_years, too_many_years);
    add_where(count * months_a_year >= note.term.count(), outlasts_term);
    add_where(any(reductions, [](Percent each) { return each <= Percent{}; }),
              reduction_not_positive);
    add_where(any(reductions, is_too_fine_a_step), reduction_too_fine);
    add_where(any(reductions, [](Percent each) { return each > most_buydown; }),
              reduction_too_large);
    add_where(any(reductions, [&](Percent each) { return each.value() > note.rate.percent(); }),
              rate_under_zero);
    // The last step is no fall of its own: it is one only where a reduction is not positive.
    add_where(count > 1 && any(std::span(steps).first(steps.size() - 1),
                               [](Percent step) { return step < Percent{}; }),
              rate_falls);
    add_where(any(steps, [](Percent step) { return step > most_yearly_rise; }),
              rate_rises_too_fast);
    return problems;
}

Money Buydown::subsidy_in_month(int month) const {
    ensure(month >= 1, "a buydown's first month is 1");
    const auto index = static_cast<std::size_t>((month - 1) / months_a_year);
    return index < years.size() ? years[index].subsidy : Money{};
}

Money Buydown::subsidy_through(int month) const {
    Money sum;
    int left = std::min(month, months());
    for (const BuydownYear& in_year : years) {
        const int paid = std::clamp(left, 0, months_a_year);
        sum += in_year.subsidy * paid;
        left -= paid;
    }
    return sum;
}

Buydown buy_down(const LoanTerms& note, std::span<const Percent> reductions) {
    ensure(buydown_problems(note, reductions).empty(), "a buydown keeps to its rules");
    Buydown buydown{note, level_payment(note.loan, note.rate, note.term), {}};
    Money before;
    for (const Percent reduction : reductions) {
        const Rate rate = reduced(note.rate, reduction).value();
        const Money payment = level_payment(note.loan, rate, note.term);
        ensure(before <= payment && payment <= buydown.note_payment,
               "payments under a buydown rise up to the note's");
        buydown.years.push_back({reduction, rate, payment, buydown.note_payment - payment});
        before = payment;
    }
    return buydown;
}

} // namespace quoin
