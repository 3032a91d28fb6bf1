// Answering the tour: what each area of the home includes and offers, and what a touch changes.
#include <quoin/answers/tour.hpp>

#include <algorithm>

#include "add_item.hpp"
#include <quoin/exact/broken.hpp>
#include <quoin/home/rules.hpp>

namespace quoin {
namespace {

/// The home as it stands, under one scenario, with what every option of the tour is held against.
struct Walk {
    const Sitting& sitting;
    const PriceBook& book;
    const Selection& selection;
    Standpoint now;
};

Pick pick_for(const Walk& walk, int index, int level, int choice) {
    Pick pick;
    const Pick* present = walk.selection.find(index);
    if (present != nullptr) pick = *present; // its quantity stays when the level changes
    pick.option = index;
    pick.level = level;
    pick.choice = choice;
    return pick;
}

bool in_home(const Walk& walk, const Pick& pick) {
    const Pick* present = walk.selection.find(pick.option);
    return present != nullptr && present->level == pick.level && present->choice == pick.choice;
}

/// What comes with the plan: the included level, the first choice, an allowance's budget.
bool comes_with_plan(const Walk& walk, const Pick& pick) {
    const Option& option = at(walk.book.options, pick.option);
    switch (option.kind) {
    case OptionKind::levels:
        return option.included_level_on(walk.selection.plan) == pick.level;
    case OptionKind::choice:
        return pick.choice == 0;
    case OptionKind::allowance:
        return option.price.on(walk.selection.plan).has_value();
    case OptionKind::upgrade:
    case OptionKind::package:
        return false;
    }
    return false;
}

TourPick named(const PriceBook& book, const Pick& pick) {
    const Option& option = at(book.options, pick.option);
    TourPick named{option.id, {}, {}, pick.quantity, pick.spend};
    if (pick.level >= 0) named.level = at(option.levels, pick.level).id;
    if (pick.choice >= 0) named.choice = at(option.choices, pick.choice).id;
    return named;
}

/// The picks that a change put in beside the one that was asked for.
std::vector<TourPick> brought(const PriceBook& book, const Change& change) {
    std::vector<TourPick> picks;
    for (const int option : change.also_added) {
        if (const Pick* pick = change.selection.find(option)) picks.push_back(named(book, *pick));
    }
    return picks;
}

/// Taking out the option that is there, or putting the pick in, with the figures of `adds`.
TourTouch touch_of(const Walk& walk, const Pick& pick, bool takes_out) {
    const Pick* present = walk.selection.find(pick.option);
    const Pick asked = takes_out ? *present : pick;
    const AddsItem item = add_item(walk.sitting, walk.now, asked);
    const Change change = takes_out ? without_option(walk.book, walk.selection, pick.option)
                                    : with_pick(walk.book, walk.selection, pick);
    ensure(item.standing == (takes_out ? Standing::chosen : Standing::offered),
           "a touch takes out what is chosen and puts in what is offered");
    ensure(change.blocked.empty(), "a touch can be made");
    TourTouch touch{takes_out, item.price, {}, item.along, item.instead, {}, {}};
    touch.brings = brought(walk.book, change);
    for (const int option : change.also_removed) {
        touch.drops.push_back(at(walk.book.options, option).id);
    }
    if (!item.by_scenario.empty()) touch.added = item.by_scenario.front();
    return touch;
}

std::string barred_by(const Walk& walk, const Pick& pick) {
    const Change change = with_pick(walk.book, walk.selection, pick);
    if (change.blocked.empty()) return {};
    return described(walk.book, change.blocked.front(), Naming::names);
}

/// The chosen package that brings a pick or a better one, and whether it is just this one.
struct Holding {
    std::string package; ///< empty: none
    bool better = false;
};

Holding holding(const Walk& walk, const Pick& pick) {
    for (const Pick& chosen : walk.selection.picks) {
        const Option& package = at(walk.book.options, chosen.option);
        for (const OptionRef& part : package.parts) {
            if (part.option != pick.option || part.level < pick.level) continue;
            return {package.name, part.level > pick.level};
        }
    }
    return {};
}

/// The state of a form that is not in the home itself, and what a touch would do.
void judge_absent(const Walk& walk, const Pick& pick, TourForm& form) {
    const Option& option = at(walk.book.options, pick.option);
    const bool picked = walk.selection.find(pick.option) != nullptr;
    const Holding held = holding(walk, pick);
    if (!held.package.empty() && !held.better && picked) {
        form.state = TourState::offered; // one above it was chosen
        form.touch = touch_of(walk, pick, true);
        return;
    }
    if (!held.package.empty()) {
        form.state = held.better ? TourState::barred : TourState::held;
        form.why = held.better ? "a better one comes in " + held.package : held.package;
        return;
    }
    const bool another = picked && option.kind == OptionKind::choice;
    if (comes_with_plan(walk, pick) && !another) {
        form.state = TourState::included;
        if (!picked) return;
        form.state = TourState::offered;
        form.touch = touch_of(walk, pick, true); // back to what comes with the plan
        return;
    }
    form.why = form.price ? barred_by(walk, pick) : "not offered on this plan";
    form.state = form.why.empty() ? TourState::offered : TourState::barred;
    const bool by_amount = option.kind == OptionKind::allowance;
    if (form.state == TourState::offered && !by_amount) form.touch = touch_of(walk, pick, false);
}

void judge(const Walk& walk, const Pick& pick, TourForm& form) {
    form.price = charge(at(walk.book.options, pick.option), pick, walk.selection.plan);
    if (!in_home(walk, pick)) {
        judge_absent(walk, pick, form);
        return;
    }
    form.state = TourState::chosen;
    form.touch = touch_of(walk, pick, true);
}

TourForm form_of(const Walk& walk, int index, int level, int choice) {
    const Option& option = at(walk.book.options, index);
    TourForm form;
    if (level >= 0) {
        form.id = at(option.levels, level).id;
        form.name = at(option.levels, level).name;
        form.note = at(option.levels, level).note;
    } else if (choice >= 0) {
        form.id = at(option.choices, choice).id;
        form.name = at(option.choices, choice).name;
        form.note = at(option.choices, choice).note;
    }
    judge(walk, pick_for(walk, index, level, choice), form);
    return form;
}

/// Levels from the included one up; a level under it costs nothing and is nobody's wish.
void add_levels(const Walk& walk, int index, TourOption& item) {
    const Option& option = at(walk.book.options, index);
    const int included = option.included_level_on(walk.selection.plan);
    for (std::size_t i = 0; i < option.levels.size(); ++i) {
        const int level = static_cast<int>(i);
        const bool below = level < included && !in_home(walk, pick_for(walk, index, level, -1));
        if (!below) item.forms.push_back(form_of(walk, index, level, -1));
    }
}

void add_forms(const Walk& walk, int index, TourOption& item) {
    const Option& option = at(walk.book.options, index);
    if (option.kind == OptionKind::levels) {
        add_levels(walk, index, item);
    } else if (option.kind == OptionKind::choice) {
        for (std::size_t i = 0; i < option.choices.size(); ++i) {
            item.forms.push_back(form_of(walk, index, -1, static_cast<int>(i)));
        }
    } else {
        item.forms.push_back(form_of(walk, index, -1, -1));
    }
}

std::optional<TourQuantity> counted(const Option& option, const Pick& pick, int plan) {
    const Quantity& quantity = option.quantity;
    if (quantity.from == Quantity::From::one) return std::nullopt;
    TourQuantity counted;
    counted.now = quantity_of(option, pick, plan);
    counted.unit = option.unit;
    counted.from = quantity.from;
    if (quantity.from != Quantity::From::buyer) return counted;
    counted.lowest = quantity.lowest;
    counted.highest = quantity.highest;
    counted.step = quantity.step;
    counted.usual = quantity.usual;
    counted.limits = quantity_limits(option);
    return counted;
}

TourOption option_of(const Walk& walk, int index) {
    const Option& option = at(walk.book.options, index);
    const Pick* present = walk.selection.find(index);
    TourOption item;
    item.id = option.id;
    item.name = option.name;
    item.kind = option.kind;
    item.text = option.text;
    item.note = option.note;
    item.structural = option.structural;
    item.work = option.work;
    if (option.cutoff >= 0) item.cutoff = at(walk.book.stages, option.cutoff).name;
    item.one_of = option.one_of;
    item.later = option.later;
    item.picked = present != nullptr;
    item.agreed = item.picked && present->agreed;
    item.cutoff_passed = option.cutoff >= 0 && walk.selection.stage >= option.cutoff;
    const Pick pick = item.picked ? *present : pick_for(walk, index, -1, -1);
    item.quantity = counted(option, pick, walk.selection.plan);
    if (option.kind == OptionKind::allowance) {
        item.budget = option.price.on(walk.selection.plan);
        if (item.picked) item.spend = present->spend;
    }
    for (const Wish& wish : walk.sitting.inquiry().wishes) {
        if (wish.pick.option == index) item.wish = wish.rank;
    }
    for (const OptionRef& part : option.parts) {
        const Option& brings = at(walk.book.options, part.option);
        const std::string level = level_name(brings, part.level);
        item.parts.push_back(level.empty() ? brings.name : brings.name + ": " + level);
    }
    add_forms(walk, index, item);
    return item;
}

TourArea area_of(const Walk& walk, int index, const std::optional<ShownAnswer>& model) {
    const Named& named = at(walk.book.areas, index);
    TourArea area{named.id, named.name, {}, {}, {}, {}};
    for (const Included& included : walk.book.included) {
        const bool here = included.area == index && allows(included.plans, walk.selection.plan);
        if (here) area.included.push_back(included.text);
    }
    if (model) {
        std::copy_if(model->items.begin(), model->items.end(), std::back_inserter(area.shown),
                     [&](const ShownItem& item) { return item.area == named.name; });
    }
    for (std::size_t i = 0; i < walk.book.options.size(); ++i) {
        if (walk.book.options[i].area != index) continue;
        area.options.push_back(option_of(walk, static_cast<int>(i)));
    }
    for (const Request& request : walk.selection.requests) {
        if (request.area == index) area.requests.push_back(request);
    }
    return area;
}

/// The promise of a tour: it is of the home, and tells every option and every pick once.
void check(const Walk& walk, const TourAnswer& answer) {
    std::size_t options = 0;
    std::size_t chosen = 0;
    for (const TourArea& area : answer.areas) {
        options += area.options.size();
        for (const TourOption& option : area.options) {
            chosen += static_cast<std::size_t>(
                std::count_if(option.forms.begin(), option.forms.end(), [](const TourForm& form) {
                    return form.state == TourState::chosen;
                }));
        }
    }
    ensure_equal(answer.scenario.price, answer.contract_price, "a tour's loan is on its home");
    ensure_equal(options, walk.book.options.size(), "a tour comes by every option once");
    ensure_equal(chosen, walk.selection.picks.size(), "every pick is a chosen form of the tour");
}

bool is_empty(const TourArea& area) {
    return area.included.empty() && area.shown.empty() && area.options.empty() &&
           area.requests.empty();
}

} // namespace

TourAnswer tour(const Sitting& sitting, std::size_t scenario) {
    const Sitting alone = sitting.only(scenario);
    const PriceBook& book = alone.book();
    const Selection& selection = alone.inquiry().selection;
    const Walk walk{alone, book, selection, standpoint(alone, selection)};
    TourAnswer answer;
    answer.heading = heading_of(alone);
    answer.contract_price = walk.now.home.contract_price;
    answer.options_price = walk.now.home.options;
    if (selection.stage >= 0) answer.stage = at(book.stages, selection.stage).name;
    answer.scenario = scenario_answer(alone, alone.rules().front(), walk.now.figures.front());
    const auto model = shown(alone);
    if (model) answer.model = model->model_plan;
    for (std::size_t i = 0; i < book.areas.size(); ++i) {
        TourArea area = area_of(walk, static_cast<int>(i), model);
        if (!is_empty(area)) answer.areas.push_back(std::move(area));
    }
    answer.incentives = incentive_offers(alone, walk.now.home);
    check(walk, answer);
    return answer;
}

} // namespace quoin
