// Reading what a household must have left, and looking it up.
#include <quoin/lending/residual_income.hpp>

#include <quoin/lending/reading.hpp>
#include <quoin/text/reader.hpp>

#include <algorithm>

#include "dated_list.hpp"

namespace quoin {
namespace {

constexpr int most_listed = 20; ///< persons

ResidualIncome::Guide read_guide(Reader& item) {
    ResidualIncome::Guide guide;
    guide.loan_up_to = item.maybe_money("loan_up_to");
    guide.each_further = item.money("each_further");
    for (const auto& [region, name, word] : codes<Region>) {
        auto& list = guide.by_persons[static_cast<std::size_t>(region)];
        item.must_have(name);
        item.items(name, [&](const Spot& spot) {
            const auto amount = as_money(spot, item.findings());
            list.push_back(amount.value_or(Money{}));
        });
        if (item.has(name) && list.empty()) {
            item.report(problems::not_amounts_by_persons(item.spot(name)));
        }
    }
    return guide;
}

/// Each guide but the last ends at a larger loan than the one before it.
bool rises(const std::vector<ResidualIncome::Guide>& guides) {
    for (std::size_t i = 0; i < guides.size(); ++i) {
        const bool last = i + 1 == guides.size();
        if (guides[i].loan_up_to.has_value() == last) return false;
        if (i > 0 && !last && *guides[i].loan_up_to <= *guides[i - 1].loan_up_to) return false;
    }
    return !guides.empty();
}

ResidualIncome read_one(Reader& item) {
    ResidualIncome residual;
    read_dated(item, residual);
    residual.upkeep_per_square_foot = item.money("upkeep_per_square_foot");
    item.must_have("most_persons");
    residual.most_persons = item.maybe_whole("most_persons", 1, most_listed).value_or(1);
    residual.guides = item.list("guides", read_guide, true);
    if (item.has("guides") && !rises(residual.guides)) {
        item.report(problems::guides_not_rising(item.spot("guides")));
    }
    return residual;
}

} // namespace

Money ResidualIncome::needed(Region region, int persons, Money loan) const {
    const auto guide = std::find_if(guides.begin(), guides.end(), [&](const Guide& one) {
        return !one.loan_up_to || loan <= *one.loan_up_to;
    });
    return guide->needed(region, std::min(persons, most_persons));
}

Money ResidualIncome::least_needed(Region region, int persons, Money loan) const {
    Money least = needed(region, persons, loan);
    for (const Guide& guide : guides) {
        if (guide.loan_up_to && *guide.loan_up_to < loan) continue;
        least = std::min(least, guide.needed(region, std::min(persons, most_persons)));
    }
    return least;
}

Money ResidualIncome::Guide::needed(Region region, int persons) const {
    const auto& list = by_persons[static_cast<std::size_t>(region)];
    const int listed = std::min(persons, static_cast<int>(list.size()));
    return list[static_cast<std::size_t>(listed) - 1] +
           each_further * static_cast<std::int64_t>(persons - listed);
}

std::vector<ResidualIncome> read_residual_income(Reader& program) {
    return read_dated_list(program, "residual_income", read_one);
}

} // namespace quoin
