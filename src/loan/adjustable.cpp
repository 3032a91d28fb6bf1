// Adjustable-rate loans: where the rate goes, and the payments that follow it.
#include <quoin/loan/adjustable.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

constexpr std::int64_t eighth = Decimal::one / 8;
constexpr std::int64_t finest = 1000; ///< of a Decimal's units, in a Rate's
constexpr Decimal highest = Rate::millionths(Rate::max_millionths).percent();

Rate rate_of(Decimal percent) {
    const auto rate = Rate::percent(percent);
    ensure(rate.has_value(), "an adjustable rate is of 0 to 100 percent");
    return *rate;
}

bool is_finer_than_rates(Percent value) { return value.value().billionths() % finest != 0; }

bool has_value_too_fine(const AdjustableTerms& terms) {
    const RateCaps& caps = terms.caps;
    const Percent values[] = {terms.margin, terms.lowest(), caps.first, caps.periodic, caps.life};
    return std::any_of(std::begin(values), std::end(values), is_finer_than_rates);
}

/// The path of the rates that `next(previous, cap, change)` gives at each change, 0 the first.
template <class Next>
std::vector<RateStep> path_of(const LoanTerms& loan, const AdjustableTerms& terms, Next next) {
    ensure(adjustable_problems(loan, terms).empty(), "an adjustable loan keeps to its rules");
    const Rate ceiling = ceiling_rate(loan, terms);
    std::vector<RateStep> path{{1, loan.rate}};
    std::size_t change = 0;
    for (int month = terms.initial.count(); month < loan.term.count();
         month += terms.reset.count()) {
        const Percent cap = change == 0 ? terms.caps.first : terms.caps.periodic;
        const Rate rate = next(path.back().rate, cap, change);
        const Decimal rise = rate.percent() - path.back().rate.percent();
        ensure(-cap.value() <= rise && rise <= cap.value(), "a rate changes within its cap");
        ensure(rate <= ceiling, "a rate never rises over its ceiling");
        if (rate != path.back().rate) path.push_back({month + 1, rate});
        ++change;
    }
    return path;
}

} // namespace

std::vector<AdjustableProblem> adjustable_problems(const LoanTerms& loan,
                                                   const AdjustableTerms& terms) {
    std::vector<AdjustableProblem> problems;
    const auto add_where = [&](bool stands, AdjustableProblem problem) {
        if (stands) problems.push_back(problem);
    };
    const Decimal ceiling = loan.rate.percent() + terms.caps.life.value();
    constexpr Percent none;
    using enum AdjustableProblem;
    add_where(terms.initial.count() <= 0, initial_not_positive);
    add_where(terms.initial >= loan.term, initial_not_under_term);
    add_where(terms.reset.count() <= 0, reset_not_positive);
    add_where(terms.margin < none, negative_margin);
    add_where(terms.floor.value_or(none) < none, negative_floor);
    add_where(terms.caps.first < none, negative_first_cap);
    add_where(terms.caps.periodic < none, negative_periodic_cap);
    add_where(terms.caps.life < none, negative_life_cap);
    add_where(has_value_too_fine(terms), value_too_fine);
    add_where(ceiling < std::max(terms.lowest(), terms.margin).value(), ceiling_under_floor);
    add_where(ceiling > highest, ceiling_too_high);
    return problems;
}

Percent to_nearest_eighth(Percent value) {
    const std::int64_t count = value.value().billionths();
    std::int64_t eighths = count / eighth;
    if (count % eighth < 0) --eighths;
    const std::int64_t above = count - eighths * eighth;
    if (above > eighth - above) ++eighths;
    return Percent(Decimal::billionths(eighths * eighth));
}

Rate fully_indexed_rate(const AdjustableTerms& terms, Percent index) {
    const Percent rounded = to_nearest_eighth(index + terms.margin);
    return rate_of(std::min(std::max(rounded, terms.lowest()).value(), highest));
}

Rate ceiling_rate(const LoanTerms& loan, const AdjustableTerms& terms) {
    return rate_of(loan.rate.percent() + terms.caps.life.value());
}

std::vector<RateStep> rate_path(const LoanTerms& loan, const AdjustableTerms& terms,
                                std::span<const Percent> indexes) {
    ensure(!indexes.empty(), "a rate path follows an index");
    return path_of(loan, terms, [&](Rate previous, Percent cap, std::size_t change) {
        const Percent index = indexes[std::min(change, indexes.size() - 1)];
        const Decimal least = previous.percent() - cap.value();
        const Decimal most =
            std::min(previous.percent() + cap.value(), ceiling_rate(loan, terms).percent());
        return rate_of(std::min(std::max(fully_indexed_rate(terms, index).percent(), least), most));
    });
}

std::vector<RateStep> worst_case_path(const LoanTerms& loan, const AdjustableTerms& terms) {
    return path_of(loan, terms, [&](Rate previous, Percent cap, std::size_t) {
        return rate_of(
            std::min(previous.percent() + cap.value(), ceiling_rate(loan, terms).percent()));
    });
}

std::vector<RateStep> composite_path(const LoanTerms& loan, const AdjustableTerms& terms) {
    return rate_path(loan, terms, {&terms.index, 1});
}

} // namespace quoin
