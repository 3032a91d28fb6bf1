// Finding the months in which costs cross.
#include "crossings.hpp"

#include <algorithm>

namespace quoin {

std::optional<int> overtaking_month(const LoanFigures& first, const LoanFigures& later) {
    const int end = std::max(first.schedule.months(), later.schedule.months());
    for (int month = 1; month <= end; ++month) {
        if (later.spent_and_owed(month) <= first.spent_and_owed(month)) return month;
    }
    return std::nullopt;
}

std::vector<Overtake> overtakes_among(const std::vector<LoanFigures>& figures) {
    std::vector<Overtake> overtakes;
    for (std::size_t a = 0; a < figures.size(); ++a) {
        for (std::size_t b = a + 1; b < figures.size(); ++b) {
            if (!figures[a].available() || !figures[b].available()) continue;
            const Money at_a = figures[a].spent_and_owed(0);
            const Money at_b = figures[b].spent_and_owed(0);
            if (at_a == at_b) continue;
            const std::size_t first = at_a < at_b ? a : b;
            const std::size_t later = at_a < at_b ? b : a;
            const auto month = overtaking_month(figures[first], figures[later]);
            if (month) overtakes.push_back({first, later, *month});
        }
    }
    return overtakes;
}

std::vector<PointsPayback> points_paybacks(const Sitting& sitting, const PricedHome& home,
                                           const std::vector<LoanFigures>& figures) {
    std::vector<PointsPayback> paybacks;
    for (std::size_t i = 0; i < figures.size(); ++i) {
        const LoanFigures& chosen = figures[i];
        const bool pays = chosen.available() && chosen.points > Points{} &&
                          sitting.rules()[i].scenario->rate.by != RateChoice::By::quoted;
        if (!pays) continue;
        Scenario without = *sitting.rules()[i].scenario;
        without.rate = {RateChoice::By::points, Points{}, Rate{}};
        ScenarioRules rules = sitting.rules()[i];
        rules.scenario = &without;
        const LoanFigures plain = loan_figures(rules, home, sitting.inquiry().facts);
        if (!plain.available()) continue;
        paybacks.push_back({i, chosen.rate, plain.rate, chosen.cash.needed() - plain.cash.needed(),
                            plain.monthly.total() - chosen.monthly.total(),
                            overtaking_month(plain, chosen)});
    }
    return paybacks;
}

std::vector<YearPoint> curve_of(const LoanFigures& figures) {
    std::vector<YearPoint> curve;
    if (!figures.available()) return curve;
    for (int year = 0; 12 * (year - 1) < figures.schedule.months(); ++year) {
        const int month = 12 * year;
        curve.push_back({year, figures.paid_through(month), figures.schedule.balance(month),
                         figures.spent_and_owed(month)});
    }
    return curve;
}

} // namespace quoin
