// Answering a comparison.
#include <quoin/answers/compare.hpp>

#include "crossings.hpp"
#include "difference.hpp"

namespace quoin {

CompareAnswer compare(const Sitting& sitting) {
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    CompareAnswer answer;
    answer.heading = heading_of(sitting);
    answer.contract_price = home.contract_price;
    const auto figures = sitting.figures(home);
    for (std::size_t i = 0; i < figures.size(); ++i) {
        answer.scenarios.push_back(scenario_answer(sitting, sitting.rules()[i], figures[i]));
        answer.against_first.push_back(amounts_between(figures.front(), figures[i]));
        answer.curves.push_back(curve_of(figures[i]));
    }
    answer.points = points_paybacks(sitting, home, figures);
    answer.orders = orders_among(figures);
    return answer;
}

} // namespace quoin
