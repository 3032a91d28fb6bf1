// Answering where a home can stand, and what would not go along to another lot or plan.
#include <quoin/answers/site.hpp>

#include <algorithm>

#include "add_item.hpp"
#include "difference.hpp"
#include <quoin/exact/broken.hpp>
#include <quoin/home/rules.hpp>

namespace quoin {
namespace {

/// A home elsewhere: its picks that the rules let stand, and those that they do not.
struct Moved {
    Selection selection;
    std::vector<FallsOut> fallen;
};

/// The picks that the rules would not let stand, each once, with its first reason. What falls out
/// may take along what needs it, so the rules are asked again until nothing is in their way.
Moved moved_to(const PriceBook& book, Selection there) {
    Moved moved{std::move(there), {}};
    const auto fall = [&](Index<Option> index, WhyNot why) {
        auto& picks = moved.selection.picks;
        const auto gone = std::find_if(picks.begin(), picks.end(),
                                       [&](const Pick& pick) { return pick.option == index; });
        if (gone == picks.end()) return;
        picks.erase(gone);
        const Option& option = at(book.options, index);
        moved.fallen.push_back({option.id, option.name, std::move(why)});
    };
    for (bool again = true; again;) {
        const std::size_t before = moved.fallen.size();
        for (const Conflict& conflict : conflicts(book, moved.selection)) {
            fall(conflict.of.option, why_not(book, conflict, Naming::names));
        }
        again = moved.fallen.size() > before;
    }
    std::erase_if(moved.selection.incentives, [&](const IncentivePick& pick) {
        const Incentive& incentive = at(book.incentives, pick.incentive);
        const bool on_plan = allows(incentive.plans, moved.selection.plan);
        if (on_plan && allows(incentive.lots, moved.selection.lot)) return false;
        moved.fallen.push_back(
            {incentive.id, incentive.name,
             WhyNot{on_plan ? WhyNot::Kind::not_for_lot : WhyNot::Kind::not_for_plan}});
        return true;
    });
    return moved;
}

SiteMove move_of(const InHand& street, const Selection& there) {
    const Standpoint then = standpoint(street.sitting, there);
    return {then.home.contract_price - street.now.home.contract_price,
            difference(street.sitting.rules().front(), street.now.figures.front(),
                       then.figures.front())};
}

/// Without its office note: who may read it adds it.
SiteLot lot_as_it_is(const PriceBook& book, const Selection& selection, Index<Lot> index) {
    const Lot& lot = at(book.lots, index);
    SiteLot answer;
    answer.lot = lot;
    answer.lot.office_note.clear();
    for (const Index<Plan> plan : lot.plans) answer.plans.push_back(at(book.plans, plan).id);
    answer.every_plan = lot.plans.empty();
    answer.chosen = index == selection.lot;
    answer.fits = allows(lot.plans, selection.plan);
    return answer;
}

SiteLot lot_of(const InHand& street, Index<Lot> index, Audience audience) {
    SiteLot answer = lot_as_it_is(street.book, street.selection, index);
    const Lot& lot = at(street.book.lots, index);
    if (audience == Audience::desk) answer.lot.office_note = lot.office_note;
    Selection there = street.selection;
    there.lot = index;
    Moved moved = moved_to(street.book, std::move(there));
    answer.falls_out = std::move(moved.fallen);
    if (!answer.can_be_had() || answer.chosen) return answer;
    answer.move = move_of(street, moved.selection);
    ensure(!answer.falls_out.empty() || !street.selection.incentives.empty() ||
               answer.move->price == lot.premium - street.now.home.lot_premium,
           "a home that goes to another lot as it is changes by the premium alone");
    return answer;
}

SitePlan plan_of(const InHand& street, Index<Plan> index) {
    const Plan& plan = at(street.book.plans, index);
    SitePlan answer;
    answer.plan = plan;
    answer.chosen = index == street.selection.plan;
    answer.fits = allows(at(street.book.lots, street.selection.lot).plans, index);
    for (const Index<Elevation> front : indexes_of(plan.elevations)) {
        Selection there = street.selection;
        there.plan = index;
        there.elevation = front;
        Moved moved = moved_to(street.book, std::move(there));
        SiteElevation elevation{at(plan.elevations, front), std::move(moved.fallen), {}};
        const bool here = answer.chosen && street.selection.elevation == front;
        if (answer.fits && !here) {
            elevation.move = move_of(street, moved.selection);
            ensure(!answer.chosen || !elevation.falls_out.empty() ||
                       !street.selection.incentives.empty() ||
                       elevation.move->price ==
                           elevation.elevation.price - street.now.home.elevation,
                   "a home with another front changes by the front's price alone");
        }
        answer.elevations.push_back(std::move(elevation));
    }
    return answer;
}

/// Where a house stands, or would stand if it were not too large: in the middle of the lot.
Outline house_on(const LotOutline& lot, const Footprint& footprint) {
    if (footprint.width == 0) return {};
    const LotView view(lot);
    if (const auto house = view.house(footprint)) return view.on_sheet(*house);
    const std::int64_t front = lot.front_setback;
    const std::int64_t left =
        view.across(front).value_or(Interval{}).middle() - footprint.width / 2;
    const std::int64_t right = left + footprint.width;
    const std::int64_t back = front + footprint.depth;
    return view.on_sheet(Outline{{left, front}, {right, front}, {right, back}, {left, back}});
}

std::optional<SiteDrawn> drawn(const Sitting& sitting) {
    const auto& map = sitting.drawings().map;
    if (!map) return std::nullopt;
    const Index<Plan> plan = sitting.inquiry().selection.plan;
    const Footprint footprint =
        footprint_of(at(sitting.book().plans, plan), sitting.drawings().of(plan));
    SiteDrawn answer{*map, footprint, {}};
    for (const LotOutline& lot : map->lots) answer.houses.push_back(house_on(lot, footprint));
    return answer;
}

/// What both answers say: which home it is, and the map it is drawn on.
SiteAnswer begun(const Sitting& sitting) {
    const PriceBook& book = sitting.book();
    const Selection& selection = sitting.inquiry().selection;
    SiteAnswer answer;
    answer.heading = heading_of(sitting);
    answer.lot = at(book.lots, selection.lot).id;
    const Plan& plan = at(book.plans, selection.plan);
    answer.plan = plan.id;
    answer.elevation = at(plan.elevations, selection.elevation).id;
    answer.note = book.community.note;
    answer.map = drawn(sitting);
    return answer;
}

} // namespace

SiteAnswer site(const Sitting& sitting, std::size_t scenario, Audience audience) {
    const Sitting alone = sitting.only(scenario);
    const InHand street{alone};
    const PriceBook& book = street.book;
    SiteAnswer answer = begun(alone);
    answer.terms = scenario_answer(alone, alone.rules().front(), street.now.figures.front()).terms;
    for (const Index<Lot> index : indexes_of(book.lots)) {
        answer.lots.push_back(lot_of(street, index, audience));
    }
    for (const Index<Plan> index : indexes_of(book.plans)) {
        answer.plans.push_back(plan_of(street, index));
    }
    return answer;
}

SiteAnswer site_as_drawn(const Sitting& sitting) {
    const PriceBook& book = sitting.book();
    SiteAnswer answer = begun(sitting);
    for (const Index<Lot> index : indexes_of(book.lots)) {
        answer.lots.push_back(lot_as_it_is(book, sitting.inquiry().selection, index));
    }
    return answer;
}

} // namespace quoin
