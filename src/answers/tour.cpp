// Answering the tour: what each area of the home includes and offers, and what a touch changes.
#include <quoin/answers/tour.hpp>

#include <algorithm>

#include "add_item.hpp"
#include "difference.hpp"
#include <quoin/exact/broken.hpp>
#include <quoin/home/rules.hpp>
#include <quoin/home/standing.hpp>

namespace quoin {
namespace {

using LevelOf = std::optional<Index<Level>>;
using ChoiceOf = std::optional<Index<Choice>>;

Pick pick_for(const InHand& walk, Index<Option> index, LevelOf level, ChoiceOf choice) {
    Pick pick;
    const Pick* present = walk.selection.find(index);
    if (present != nullptr) pick = *present; // its quantity stays when the level changes
    pick.option = index;
    pick.level = level;
    pick.choice = choice;
    return pick;
}

bool in_home(const InHand& walk, const Pick& pick) {
    const Pick* present = walk.selection.find(pick.option);
    return present != nullptr && present->level == pick.level && present->choice == pick.choice;
}

TourPick named(const PriceBook& book, const Pick& pick) {
    const Option& option = at(book.options, pick.option);
    TourPick named{option.id, {}, {}, pick.quantity, pick.spend};
    if (pick.level) named.level = at(option.levels, *pick.level).id;
    if (pick.choice) named.choice = at(option.choices, *pick.choice).id;
    return named;
}

/// The picks that a change put in beside the one that was asked for.
std::vector<TourPick> brought(const PriceBook& book, const Change& change) {
    std::vector<TourPick> picks;
    for (const Index<Option> option : change.also_added) {
        if (const Pick* pick = change.selection.find(option)) picks.push_back(named(book, *pick));
    }
    return picks;
}

/// Making the change, with the figures of `adds`.
TourTouch touch_of(const InHand& walk, const OptionStanding& standing) {
    const Change& change = standing.change;
    ensure(change.blocked.empty(), "a touch can be made");
    ChangeAdds adds = change_adds(walk.sitting, walk.now, change, standing.takes_out);
    TourTouch touch;
    touch.takes_out = standing.takes_out;
    touch.price = adds.price;
    touch.along = std::move(adds.along);
    touch.instead = std::move(adds.instead);
    touch.brings = brought(walk.book, change);
    for (const Index<Option> option : change.also_removed) {
        touch.drops.push_back(at(walk.book.options, option).id);
    }
    if (!adds.by_scenario.empty()) touch.added = std::move(adds.by_scenario.front());
    return touch;
}

/// Of a form that comes with the plan or a package: where another was chosen, it is to be had by
/// taking that out.
TourState by_itself(const OptionStanding& standing, TourState otherwise) {
    return standing.takes_out ? TourState::offered : otherwise;
}

void judge(const InHand& walk, const Pick& pick, TourForm& form) {
    using Kind = OptionStanding::Kind;
    const Option& option = at(walk.book.options, pick.option);
    form.price = charge(option, pick, walk.selection.plan);
    const OptionStanding standing = option_standing(walk.book, walk.selection, pick);
    const auto package = [&] { return at(walk.book.options, standing.package.value()).name; };
    bool touched = standing.takes_out;
    switch (standing.kind) {
    case Kind::chosen:
        form.state = TourState::chosen;
        break;
    case Kind::held:
        form.state = by_itself(standing, TourState::held);
        if (standing.better) {
            form.state = TourState::barred;
            form.why_not = WhyNot{.kind = WhyNot::Kind::better_in_package, .names = {package()}};
            touched = false;
        } else if (!touched) {
            form.package = package();
        }
        break;
    case Kind::included:
        form.state = by_itself(standing, TourState::included);
        break;
    case Kind::offered:
        form.state = TourState::offered;
        touched = option.kind != OptionKind::allowance; // an amount is no touch
        break;
    case Kind::barred:
        form.state = TourState::barred;
        form.why_not = why_not(walk.book, standing.reason(), Naming::names);
        break;
    }
    if (touched) form.touch = touch_of(walk, standing);
}

/// Of a level or a choice.
void tell(const auto& item, TourForm& form) {
    form.id = item.id;
    form.name = item.name;
    form.note = item.note;
    form.look = item.look;
}

TourForm form_of(const InHand& walk, Index<Option> index, LevelOf level, ChoiceOf choice) {
    const Option& option = at(walk.book.options, index);
    TourForm form;
    if (level) {
        tell(at(option.levels, *level), form);
    } else if (choice) {
        tell(at(option.choices, *choice), form);
    }
    judge(walk, pick_for(walk, index, level, choice), form);
    return form;
}

/// Levels from the included one up; a level under it costs nothing and is nobody's wish.
void add_levels(const InHand& walk, Index<Option> index, TourOption& item) {
    const Option& option = at(walk.book.options, index);
    const auto included = option.included_level_on(walk.selection.plan);
    for (const Index<Level> level : indexes_of(option.levels)) {
        const bool below = level < included && !in_home(walk, pick_for(walk, index, level, {}));
        if (!below) item.forms.push_back(form_of(walk, index, level, {}));
    }
}

void add_forms(const InHand& walk, Index<Option> index, TourOption& item) {
    const Option& option = at(walk.book.options, index);
    if (option.kind == OptionKind::levels) {
        add_levels(walk, index, item);
    } else if (option.kind == OptionKind::choice) {
        for (const Index<Choice> choice : indexes_of(option.choices)) {
            item.forms.push_back(form_of(walk, index, {}, choice));
        }
    } else {
        item.forms.push_back(form_of(walk, index, {}, {}));
    }
}

std::optional<TourQuantity> counted(const Option& option, const Pick& pick, Index<Plan> plan) {
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
    return counted;
}

TourOption option_of(const InHand& walk, Index<Option> index) {
    const Option& option = at(walk.book.options, index);
    const Pick* present = walk.selection.find(index);
    TourOption item;
    item.id = option.id;
    item.name = option.name;
    item.kind = option.kind;
    item.text = option.text;
    item.note = option.note;
    item.look = option.look;
    item.structural = option.structural;
    item.work = option.work;
    if (option.cutoff) item.cutoff = at(walk.book.stages, *option.cutoff).name;
    item.one_of = option.one_of;
    item.later = option.later;
    item.picked = present != nullptr;
    item.agreed = item.picked && present->agreed;
    item.cutoff_passed = cutoff_passed(option, walk.selection);
    const Pick pick = item.picked ? *present : pick_for(walk, index, {}, {});
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

/// What the lines of an area's options come to.
Money chosen_price(const InHand& walk, Index<Area> area) {
    Money sum;
    for (const Line& line : walk.now.home.lines) {
        const bool here = line.option && at(walk.book.options, *line.option).area == area;
        if (here) sum = sum + line.amount;
    }
    return sum;
}

std::optional<TourEmptied> emptied_of(const InHand& walk) {
    TourEmptied emptied;
    Selection bare = walk.selection;
    std::erase_if(bare.picks, [&](const Pick& pick) {
        const Option& option = at(walk.book.options, pick.option);
        const bool stays = pick.agreed || cutoff_passed(option, walk.selection);
        if (stays) emptied.keeps.push_back(option.id);
        return !stays;
    });
    if (bare.picks.size() == walk.selection.picks.size()) return {};
    if (!conflicts(walk.book, bare).empty()) return {}; // what stays needs what would go
    const Standpoint then = standpoint(walk.sitting, bare);
    emptied.price = then.home.contract_price - walk.now.home.contract_price;
    emptied.added =
        difference(walk.sitting.rules().front(), walk.now.figures.front(), then.figures.front());
    return emptied;
}

NamedPick in_names(const PriceBook& book, const Pick& pick) {
    const Option& option = at(book.options, pick.option);
    NamedPick named{option.id, option.name, {}};
    if (pick.level) named.form = at(option.levels, *pick.level).name;
    if (pick.choice) named.form = at(option.choices, *pick.choice).name;
    return named;
}

TourAreaInShort in_short(const InHand& walk, Index<Area> index) {
    const Named& named = at(walk.book.areas, index);
    TourAreaInShort area{named.id, named.name, chosen_price(walk, index), {}};
    for (const Index<Option> option : indexes_of(walk.book.options)) {
        if (at(walk.book.options, option).area != index) continue;
        const Pick* pick = walk.selection.find(option);
        if (pick != nullptr) area.chosen.push_back(in_names(walk.book, *pick));
    }
    return area;
}

/// (The algorithms of std::ranges are not in the library that the browser's module is built with.)
bool any(const auto& items, const auto& holds) {
    return std::any_of(items.begin(), items.end(), holds);
}

bool has_anything(const InHand& walk, Index<Area> index, const std::optional<ShownAnswer>& model) {
    const auto is_here = [&](const auto& item) { return item.area == index; };
    const auto comes_here = [&](const Included& included) {
        return is_here(included) && allows(included.plans, walk.selection.plan);
    };
    const auto shown_here = [&](const ShownItem& item) {
        return item.area == at(walk.book.areas, index).name;
    };
    return any(walk.book.options, is_here) || any(walk.selection.requests, is_here) ||
           any(walk.book.included, comes_here) || (model && any(model->items, shown_here));
}

TourArea area_of(const InHand& walk, Index<Area> index, const std::optional<ShownAnswer>& model) {
    const Named& named = at(walk.book.areas, index);
    TourArea area{named.id, named.name, chosen_price(walk, index), {}, {}, {}, {}};
    for (const Included& included : walk.book.included) {
        const bool here = included.area == index && allows(included.plans, walk.selection.plan);
        if (here) area.included.push_back(included.text);
    }
    if (model) {
        std::copy_if(model->items.begin(), model->items.end(), std::back_inserter(area.shown),
                     [&](const ShownItem& item) { return item.area == named.name; });
    }
    for (const Index<Option> option : indexes_of(walk.book.options)) {
        if (at(walk.book.options, option).area != index) continue;
        area.options.push_back(option_of(walk, option));
    }
    for (const Request& request : walk.selection.requests) {
        if (request.area == index) area.requests.push_back(request);
    }
    return area;
}

std::size_t chosen_forms(const TourArea& area) {
    std::size_t chosen = 0;
    for (const TourOption& option : area.options) {
        for (const TourForm& form : option.forms) chosen += form.state == TourState::chosen ? 1 : 0;
    }
    return chosen;
}

/// The promise of a tour: it is of the home, tells every pick once and, of the areas that it tells,
/// every option.
void check(const InHand& walk, const TourAnswer& answer, bool whole) {
    std::size_t picks = 0;
    Money price;
    for (const TourAreaInShort& area : answer.all_areas) {
        picks += area.chosen.size();
        price = price + area.price;
        const auto told = std::find_if(answer.areas.begin(), answer.areas.end(),
                                       [&](const TourArea& one) { return one.id == area.id; });
        if (told == answer.areas.end()) continue;
        ensure_equal(chosen_forms(*told), area.chosen.size(), "every pick is a chosen form");
    }
    ensure_equal(answer.scenario.price, answer.contract_price, "a tour's loan is on its home");
    ensure_equal(price, walk.now.home.options, "the areas' prices sum to the options'");
    ensure_equal(picks, walk.selection.picks.size(), "every pick is of an area");
    if (!whole) return;
    std::size_t options = 0;
    for (const TourArea& area : answer.areas) options += area.options.size();
    ensure_equal(options, walk.book.options.size(), "a tour comes by every option once");
}

/// Of the level or the choice of that id.
std::string office_note_of(const auto& items, const std::string& id) {
    const auto index = index_of(items, id);
    return index ? at(items, *index).office_note : std::string();
}

/// What no answer has but one for the desk.
void add_office_notes(const PriceBook& book, TourAnswer& answer) {
    for (TourArea& area : answer.areas) {
        for (TourOption& item : area.options) {
            const Option& option = at(book.options, index_of(book.options, item.id).value());
            item.office_note = option.office_note;
            for (TourForm& form : item.forms) {
                form.office_note = office_note_of(option.levels, form.id) +
                                   office_note_of(option.choices, form.id);
            }
        }
    }
}

} // namespace

TourAnswer tour(const Sitting& sitting, std::size_t scenario, Audience audience,
                const std::vector<Index<Area>>& areas) {
    const Sitting alone = sitting.only(scenario);
    const InHand walk{alone};
    const PriceBook& book = walk.book;
    const Selection& selection = walk.selection;
    TourAnswer answer;
    answer.heading = heading_of(alone);
    answer.contract_price = walk.now.home.contract_price;
    answer.options_price = walk.now.home.options;
    if (selection.stage) answer.stage = at(book.stages, *selection.stage).name;
    answer.scenario = scenario_answer(alone, alone.rules().front(), walk.now.figures.front());
    answer.drawn = !at(book.plans, selection.plan).drawing.empty();
    const auto model = shown(alone);
    if (model) answer.model = model->model_plan;
    for (const Index<Area> index : indexes_of(book.areas)) {
        if (!has_anything(walk, index, model)) continue;
        answer.all_areas.push_back(in_short(walk, index));
        if (areas.empty() || std::find(areas.begin(), areas.end(), index) != areas.end()) {
            answer.areas.push_back(area_of(walk, index, model));
        }
    }
    for (const Wish& wish : alone.inquiry().wishes) {
        answer.wishes.push_back(in_names(book, wish.pick));
    }
    answer.incentives = incentive_offers(alone, walk.now.home);
    answer.emptied = emptied_of(walk);
    if (audience == Audience::desk) add_office_notes(book, answer);
    check(walk, answer, areas.empty());
    return answer;
}

} // namespace quoin
