// The rules of a price book on a selection.
#include <quoin/home/rules.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/home/priced_home.hpp>

namespace quoin {
namespace {

bool offered_on(const Option& option, int plan) {
    if (!allows(option.only.plans, plan)) return false;
    if (option.quantity.usual_on(plan) == Decimal{}) return false;
    if (option.kind == OptionKind::choice) return true;
    if (option.kind != OptionKind::levels) return option.price.on(plan).has_value();
    return std::any_of(option.levels.begin(), option.levels.end(),
                       [&](const Level& level) { return level.price.on(plan).has_value(); });
}

/// The name of a measure by which the lot is too small, or nullptr.
const std::string* too_small(const Only& only, const Lot& lot) {
    for (const Measure& least : only.lot_at_least) {
        const Decimal* size = find_measure(lot.measures, least.name);
        if (size == nullptr || *size < least.value) return &least.name;
    }
    return nullptr;
}

/// The first requirement of a pick that does not hold, or nullptr.
const std::vector<OptionRef>* unmet(const PriceBook& book, const Selection& selection, int option) {
    for (const auto& need : at(book.options, option).needs) {
        const bool met = std::any_of(need.begin(), need.end(), [&](const OptionRef& ref) {
            return holds(book, selection, ref);
        });
        if (!met) return &need;
    }
    return nullptr;
}

bool excludes(const PriceBook& book, int a, int b) {
    const auto names = [&](int one, int other) {
        const auto& list = at(book.options, one).excludes;
        return std::find(list.begin(), list.end(), other) != list.end();
    };
    return names(a, b) || names(b, a);
}

bool same_group(const PriceBook& book, int a, int b) {
    const std::string& group = at(book.options, a).one_of;
    return !group.empty() && group == at(book.options, b).one_of;
}

/// Whether `test` holds for an option or for one that it brings as a package.
template <class Test>
bool any_brought(const PriceBook& book, int option, const Test& test) {
    const auto& parts = at(book.options, option).parts;
    return test(option) || std::any_of(parts.begin(), parts.end(),
                                       [&](const OptionRef& part) { return test(part.option); });
}

/// Whether two picks cannot stand together by a rule, or what they bring cannot.
template <class Rule>
bool clash(const PriceBook& book, int a, int b, const Rule& rule) {
    return any_brought(book, a, [&](int one) {
        return any_brought(book, b,
                           [&](int other) { return one != other && rule(book, one, other); });
    });
}

void clashes(const PriceBook& book, const Selection& selection, std::size_t index,
             std::vector<Conflict>& found) {
    const int option = selection.picks[index].option;
    for (std::size_t i = 0; i < index; ++i) {
        const int other = selection.picks[i].option;
        if (clash(book, option, other, excludes)) {
            found.push_back({Barrier::excludes, option, {{other, -1}}, {}});
        } else if (clash(book, option, other, same_group)) {
            found.push_back({Barrier::one_of, option, {{other, -1}}, {}});
        }
    }
}

void erase_option(Selection& selection, int option) {
    std::erase_if(selection.picks, [&](const Pick& pick) { return pick.option == option; });
}

/// Takes out picks whose needs no longer hold, until none is left.
void drop_unsupported(const PriceBook& book, Change& change) {
    for (bool again = true; again;) {
        again = false;
        for (const Pick& pick : change.selection.picks) {
            if (unmet(book, change.selection, pick.option) == nullptr) continue;
            change.also_removed.push_back(pick.option);
            erase_option(change.selection, pick.option);
            again = true;
            break;
        }
    }
}

void place(Selection& selection, const Pick& pick) {
    for (Pick& present : selection.picks) {
        if (present.option == pick.option) {
            present = pick;
            return;
        }
    }
    selection.picks.push_back(pick);
}

/// Adds what `option` needs, first alternatives that can be had here, deepest needs first.
void add_needs(const PriceBook& book, Change& change, int option, int depth) {
    constexpr int deepest = 16; // cycles are refused when the book is read; this bounds "any of"
    while (const auto* need = depth < deepest ? unmet(book, change.selection, option) : nullptr) {
        const auto usable = std::find_if(need->begin(), need->end(), [&](const OptionRef& ref) {
            return barriers(book, change.selection, ref.option).empty() &&
                   least_pick(book, ref, change.selection.plan);
        });
        if (usable == need->end()) {
            change.blocked.push_back({Barrier::needs, option, *need, {}});
            return;
        }
        add_needs(book, change, usable->option, depth + 1);
        if (!change.blocked.empty()) return;
        place(change.selection, *least_pick(book, *usable, change.selection.plan));
        ensure(holds(book, change.selection, *usable), "what is added for a need meets it");
        change.also_added.push_back(usable->option);
    }
}

} // namespace

bool exclude_each_other(const PriceBook& book, int a, int b) {
    return clash(book, a, b, excludes) || clash(book, a, b, same_group);
}

bool holds(const PriceBook& book, const Selection& selection, OptionRef ref) {
    const Option& wanted = at(book.options, ref.option);
    // An included level counts as held: nothing has to be bought for it.
    const int included = wanted.included_level_on(selection.plan);
    if (wanted.kind == OptionKind::levels && included >= 0 && included >= ref.level) return true;
    return std::any_of(selection.picks.begin(), selection.picks.end(), [&](const Pick& pick) {
        if (pick.option == ref.option && pick.level >= ref.level) return true;
        const auto& parts = at(book.options, pick.option).parts;
        return std::any_of(parts.begin(), parts.end(), [&](const OptionRef& part) {
            return part.option == ref.option && part.level >= ref.level;
        });
    });
}

std::vector<Conflict> barriers(const PriceBook& book, const Selection& selection, int index) {
    const Option& option = at(book.options, index);
    const Plan& plan = at(book.plans, selection.plan);
    const Lot& lot = at(book.lots, selection.lot);
    std::vector<Conflict> found;
    const auto add = [&](Barrier barrier, std::string measure = {}) {
        found.push_back({barrier, index, {}, std::move(measure)});
    };
    if (!offered_on(option, selection.plan)) add(Barrier::not_on_plan);
    if (!allows(option.only.elevations, at(plan.elevations, selection.elevation).id)) {
        add(Barrier::not_on_elevation);
    }
    if (!allows(option.only.lots, selection.lot)) add(Barrier::not_on_lot);
    if (!allows(option.only.grades, lot.grade)) add(Barrier::lot_grade);
    if (const std::string* measure = too_small(option.only, lot)) {
        add(Barrier::lot_too_small, *measure);
    }
    if (option.cutoff >= 0 && selection.stage >= option.cutoff) add(Barrier::past_cutoff);
    return found;
}

std::vector<Conflict> conflicts(const PriceBook& book, const Selection& selection) {
    std::vector<Conflict> found;
    for (std::size_t i = 0; i < selection.picks.size(); ++i) {
        const int option = selection.picks[i].option;
        for (Conflict& barrier : barriers(book, selection, option)) {
            const bool settled = barrier.barrier == Barrier::past_cutoff;
            if (!settled || !selection.picks[i].agreed) found.push_back(std::move(barrier));
        }
        if (const auto* need = unmet(book, selection, option)) {
            found.push_back({Barrier::needs, option, *need, {}});
        }
        clashes(book, selection, i, found);
    }
    return found;
}

std::optional<Pick> least_pick(const PriceBook& book, OptionRef ref, int plan) {
    Pick pick;
    pick.option = ref.option;
    const Option& option = at(book.options, ref.option);
    if (option.kind == OptionKind::choice) pick.choice = 0;
    if (option.kind != OptionKind::levels) return pick;
    pick.level = std::max(ref.level, 0);
    const int count = static_cast<int>(option.levels.size());
    while (pick.level < count && !at(option.levels, pick.level).price.on(plan)) ++pick.level;
    return pick.level < count ? std::optional(pick) : std::nullopt;
}

Change with_pick(const PriceBook& book, const Selection& selection, const Pick& pick) {
    Change change{selection, {}, {}, barriers(book, selection, pick.option)};
    if (!change.blocked.empty()) return change;
    for (const Pick& other : selection.picks) {
        if (other.option == pick.option) continue;
        if (exclude_each_other(book, pick.option, other.option)) {
            erase_option(change.selection, other.option);
            change.also_removed.push_back(other.option);
        }
    }
    add_needs(book, change, pick.option, 0);
    place(change.selection, pick);
    if (!change.blocked.empty()) return change;
    drop_unsupported(book, change);
    change.blocked = conflicts(book, change.selection);
    if (change.selection.find(pick.option) == nullptr && change.blocked.empty()) {
        change.blocked.push_back({Barrier::needs, pick.option, {}, {}});
    }
    return change;
}

Change without_option(const PriceBook& book, const Selection& selection, int option) {
    Change change{selection, {}, {}, {}};
    erase_option(change.selection, option);
    drop_unsupported(book, change);
    return change;
}

std::string name_of(const PriceBook& book, OptionRef ref) {
    const Option& option = at(book.options, ref.option);
    if (ref.level < 0) return option.id;
    return option.id + ":" + at(option.levels, ref.level).id;
}

} // namespace quoin
