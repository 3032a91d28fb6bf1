// Running loans' costs over the months and setting them against each other.
#include "crossings.hpp"

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

/// Spent and owed through each month, the closing first.
std::vector<Money> line_of(const LoanFigures& figures) {
    std::vector<Money> line;
    const int months = figures.paid_schedule().months();
    line.reserve(static_cast<std::size_t>(months) + 1);
    for (int month = 0; month <= months; ++month) line.push_back(figures.spent_and_owed(month));
    return line;
}

/// The month from which on, for good, the first has cost no more than the second.
std::optional<int> no_dearer_from(const std::vector<CostStretch>& order) {
    std::optional<int> month;
    for (const CostStretch& stretch : order) {
        if (stretch.cheaper == Cheaper::second) {
            month.reset();
        } else if (!month) {
            month = stretch.from;
        }
    }
    return month;
}

} // namespace

std::vector<LoanOrder> orders_among(const std::vector<LoanFigures>& figures) {
    std::vector<std::vector<Money>> lines;
    for (const LoanFigures& f : figures) {
        lines.push_back(f.available() ? line_of(f) : std::vector<Money>{});
    }
    std::vector<LoanOrder> orders;
    for (std::size_t a = 0; a < figures.size(); ++a) {
        for (std::size_t b = a + 1; b < figures.size(); ++b) {
            if (lines[a].empty() || lines[b].empty()) continue;
            orders.push_back({a, b, cost_order(lines[a], lines[b])});
        }
    }
    return orders;
}

std::vector<PointsPayback> points_paybacks(const Sitting& sitting, const PricedHome& home,
                                           const std::vector<LoanFigures>& figures) {
    std::vector<PointsPayback> paybacks;
    for (std::size_t i = 0; i < figures.size(); ++i) {
        const LoanFigures& chosen = figures[i];
        const ScenarioRules& rules = sitting.rules()[i];
        const bool pays = chosen.available() && chosen.points > Points{} &&
                          rules.scenario.rate.by != RateChoice::By::quoted;
        if (!pays) continue;
        Scenario without = rules.scenario;
        without.rate = {RateChoice::By::points, Points{}, Rate{}};
        const LoanFigures plain = loan_figures(rules.with(without), home, sitting.inquiry().facts);
        if (!plain.available()) continue;
        const std::vector<CostStretch> order = cost_order(line_of(chosen), line_of(plain));
        ensure(plain.points <= Points{}, "points are set against a rate that takes none");
        paybacks.push_back({i, chosen.rate, plain.rate, chosen.cash.needed() - plain.cash.needed(),
                            plain.monthly.total() - chosen.monthly.total(), order,
                            no_dearer_from(order)});
    }
    return paybacks;
}

namespace {

/// What has been paid by a month, when taxes and insurance go on after the loan.
YearPoint standing_at(const LoanFigures& f, int year) {
    const int month = months_a_year * year;
    const int after = std::max(month - f.schedule.terms().term.count(), 0);
    return {year, f.paid_through(month) + f.monthly.local() * after,
            f.paid_schedule().balance(month), f.spent_and_owed(month)};
}

} // namespace

std::vector<std::vector<YearPoint>> apart_from(const std::vector<LoanFigures>& figures,
                                               std::size_t against) {
    std::vector<std::vector<YearPoint>> apart(figures.size());
    if (figures.empty()) return apart;
    const LoanFigures& base = figures.at(against);
    int months = 0;
    for (const LoanFigures& f : figures) {
        if (f.available()) months = std::max(months, f.paid_schedule().months());
    }
    for (std::size_t i = 0; i < figures.size(); ++i) {
        if (!figures[i].available() || !base.available()) continue;
        for (int year = 0; months_a_year * (year - 1) < months; ++year) {
            const YearPoint one = standing_at(figures[i], year);
            const YearPoint other = standing_at(base, year);
            apart[i].push_back({year, one.paid - other.paid, one.balance - other.balance,
                                one.spent_and_owed - other.spent_and_owed});
        }
    }
    return apart;
}

std::vector<YearPoint> curve_of(const LoanFigures& figures) {
    std::vector<YearPoint> curve;
    if (!figures.available()) return curve;
    const Schedule& paid = figures.paid_schedule();
    for (int year = 0; months_a_year * (year - 1) < paid.months(); ++year) {
        const int month = months_a_year * year;
        curve.push_back({year, figures.paid_through(month), paid.balance(month),
                         figures.spent_and_owed(month)});
    }
    return curve;
}

} // namespace quoin
