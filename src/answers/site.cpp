// Answering where a home can stand, and what would not go along to another lot or plan.
#include <quoin/answers/site.hpp>

#include <algorithm>

#include <quoin/home/rules.hpp>

namespace quoin {
namespace {

bool offered(const PriceBook& book, const Selection& selection, const Pick& pick) {
    const Option& option = at(book.options, pick.option);
    return option.kind != OptionKind::levels ||
           at(option.levels, pick.level).price.on(selection.plan).has_value();
}

/// The picks that the rules would not let stand, each once, with its first reason.
std::vector<FallsOut> falling_out(const PriceBook& book, const Selection& selection) {
    std::vector<FallsOut> fallen;
    const auto add = [&](int index, std::string why) {
        const Option& option = at(book.options, index);
        const bool known = std::any_of(fallen.begin(), fallen.end(), [&](const FallsOut& one) {
            return one.option == option.id;
        });
        if (!known) fallen.push_back({option.id, option.name, std::move(why)});
    };
    for (const Conflict& conflict : conflicts(book, selection)) {
        add(conflict.option, described(book, conflict, Naming::names));
    }
    for (const Pick& pick : selection.picks) {
        if (!offered(book, selection, pick)) add(pick.option, "not offered on this plan");
    }
    return fallen;
}

SiteLot lot_of(const PriceBook& book, const Selection& selection, int index) {
    const Lot& lot = at(book.lots, index);
    SiteLot answer{lot.id,   lot.premium, lot.status, lot.grade, lot.flood_zone, {}, {}, {},
                   lot.note, {},          {},         {}};
    for (const int plan : lot.plans) answer.plans.push_back(at(book.plans, plan).id);
    answer.every_plan = lot.plans.empty();
    answer.measures = lot.measures;
    answer.chosen = index == selection.lot;
    answer.fits = allows(lot.plans, selection.plan);
    Selection there = selection;
    there.lot = index;
    answer.falls_out = falling_out(book, there);
    return answer;
}

/// The elevation of the same id where a plan has it, else its first.
int like_elevation(const Plan& plan, const std::string& id) {
    for (std::size_t i = 0; i < plan.elevations.size(); ++i) {
        if (plan.elevations[i].id == id) return static_cast<int>(i);
    }
    return 0;
}

SitePlan plan_of(const PriceBook& book, const Selection& selection, int index) {
    const Plan& plan = at(book.plans, index);
    SitePlan answer{plan.id,
                    plan.name,
                    plan.style,
                    plan.note,
                    plan.base_price,
                    plan.bedrooms,
                    plan.bathrooms,
                    plan.square_feet,
                    plan.measures,
                    plan.elevations,
                    {},
                    {},
                    {}};
    answer.chosen = index == selection.plan;
    answer.fits = allows(at(book.lots, selection.lot).plans, index);
    Selection there = selection;
    const Plan& now = at(book.plans, selection.plan);
    there.plan = index;
    there.elevation = like_elevation(plan, at(now.elevations, selection.elevation).id);
    answer.falls_out = falling_out(book, there);
    return answer;
}

} // namespace

SiteAnswer site(const Sitting& sitting) {
    const PriceBook& book = sitting.book();
    const Selection& selection = sitting.inquiry().selection;
    SiteAnswer answer;
    answer.heading = heading_of(sitting);
    answer.lot = at(book.lots, selection.lot).id;
    const Plan& plan = at(book.plans, selection.plan);
    answer.plan = plan.id;
    answer.elevation = at(plan.elevations, selection.elevation).id;
    answer.note = book.community.note;
    for (std::size_t i = 0; i < book.lots.size(); ++i) {
        answer.lots.push_back(lot_of(book, selection, static_cast<int>(i)));
    }
    for (std::size_t i = 0; i < book.plans.size(); ++i) {
        answer.plans.push_back(plan_of(book, selection, static_cast<int>(i)));
    }
    return answer;
}

} // namespace quoin
