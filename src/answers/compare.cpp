// Answering a comparison.
#include <quoin/answers/compare.hpp>

#include <algorithm>

#include "crossings.hpp"
#include "difference.hpp"
#include <quoin/exact/broken.hpp>

namespace quoin {

namespace {

/// The promise of a comparison: what a loan changes against the first is what the two are apart.
void check(const CompareAnswer& answer) {
    for (std::size_t i = 0; i < answer.scenarios.size(); ++i) {
        const ScenarioAnswer& one = answer.scenarios[i];
        const ScenarioAnswer& first = answer.scenarios.front();
        const Added& added = answer.against_first[i];
        ensure_equal(added.available(), one.available() && first.available(),
                     "two loans that can be had are compared, and no others");
        ensure_equal(one.available(), !answer.curves[i].empty(), "a loan to be had has its curve");
        ensure_equal(answer.against_shown[i].available(),
                     one.available() && answer.scenarios[answer.against].available(),
                     "so are a loan and the one that is shown");
        if (!added.available()) continue;
        ensure_equal(added.per_month, one.monthly.total() - first.monthly.total(),
                     "a month against the first's is what the two are apart");
        ensure_equal(added.cash, one.cash.needed() - first.cash.needed(), "so is the cash");
        ensure_equal(added.over_loan, one.paid_over_loan - first.paid_over_loan,
                     "so is what is paid over the loan");
        ensure_equal(answer.curves[i].front().paid, one.cash.needed(),
                     "a curve begins with the cash needed");
        ensure(answer.curves[i].back().balance.is_zero(), "a curve ends where its loan does");
    }
}

/// So are the years of two loans that both still run.
void check_years(const CompareAnswer& answer) {
    for (std::size_t i = 0; i < answer.scenarios.size(); ++i) {
        const auto& apart = answer.apart[i];
        ensure_equal(!apart.empty(),
                     answer.scenarios[i].available() &&
                         answer.scenarios[answer.against].available(),
                     "the years of two loans that can be had are held against each other");
        const auto& one = answer.curves[i];
        const auto& other = answer.curves[answer.against];
        for (std::size_t year = 0; !apart.empty() && year < std::min(one.size(), other.size());
             ++year) {
            ensure_equal(apart[year].balance, one[year].balance - other[year].balance,
                         "what is owed more is what two balances are apart");
            ensure_equal(apart[year].spent_and_owed,
                         one[year].spent_and_owed - other[year].spent_and_owed,
                         "so is what has been spent and is owed");
        }
    }
}

} // namespace

CompareAnswer compare(const Sitting& sitting, std::size_t against) {
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    CompareAnswer answer;
    answer.heading = heading_of(sitting);
    answer.contract_price = home.contract_price;
    const auto figures = sitting.figures(home);
    for (std::size_t i = 0; i < figures.size(); ++i) {
        answer.scenarios.push_back(scenario_answer(sitting, sitting.rules()[i], figures[i]));
        answer.against_first.push_back(amounts_between(figures.front(), figures[i]));
        answer.against_shown.push_back(amounts_between(figures[against], figures[i]));
        answer.curves.push_back(curve_of(figures[i]));
    }
    answer.against = against;
    answer.apart = apart_from(figures, against);
    check(answer);
    check_years(answer);
    answer.points = points_paybacks(sitting, home, figures);
    answer.orders = orders_among(figures);
    return answer;
}

} // namespace quoin
