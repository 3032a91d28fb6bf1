// The rules of a price book on a selection.
#include <quoin/home/rules.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

bool offered_on(const Option& option, Index<Plan> plan) {
    if (!allows(option.only.plans, plan)) return false;
    if (option.quantity.usual_on(plan) == Decimal{}) return false;
    if (option.kind == OptionKind::choice) return true;
    if (option.kind != OptionKind::levels) return option.price.on(plan).has_value();
    return std::any_of(option.levels.begin(), option.levels.end(),
                       [&](const Level& level) { return level.price.on(plan).has_value(); });
}

/// Where no level is named, there is none to be had.
bool level_offered_on(const Option& option, std::optional<Index<Level>> level, Index<Plan> plan) {
    return !level || at(option.levels, *level).price.on(plan).has_value();
}

/// The first requirement of a pick that does not hold, or nullptr.
const std::vector<OptionRef>* unmet(const PriceBook& book, const Selection& selection,
                                    Index<Option> option) {
    for (const auto& need : at(book.options, option).needs) {
        const bool met = std::any_of(need.begin(), need.end(), [&](const OptionRef& ref) {
            return holds(book, selection, ref);
        });
        if (!met) return &need;
    }
    return nullptr;
}

bool excludes(const PriceBook& book, Index<Option> a, Index<Option> b) {
    const auto names = [&](Index<Option> one, Index<Option> other) {
        const auto& list = at(book.options, one).excludes;
        return std::find(list.begin(), list.end(), other) != list.end();
    };
    return names(a, b) || names(b, a);
}

bool same_group(const PriceBook& book, Index<Option> a, Index<Option> b) {
    const std::string& group = at(book.options, a).one_of;
    return !group.empty() && group == at(book.options, b).one_of;
}

/// Whether `test` holds for an option or for one that it brings as a package.
bool any_brought(const PriceBook& book, Index<Option> option, const auto& test) {
    const auto& parts = at(book.options, option).parts;
    return test(option) || std::any_of(parts.begin(), parts.end(),
                                       [&](const OptionRef& part) { return test(part.option); });
}

/// Whether two picks cannot stand together by a rule, or what they bring cannot.
bool clash(const PriceBook& book, Index<Option> a, Index<Option> b, const auto& rule) {
    return any_brought(book, a, [&](Index<Option> one) {
        return any_brought(
            book, b, [&](Index<Option> other) { return one != other && rule(book, one, other); });
    });
}

void erase_option(Selection& selection, Index<Option> option) {
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
void add_needs(const PriceBook& book, Change& change, Index<Option> option, int depth) {
    constexpr int deepest = 16; // cycles are refused when the book is read; this bounds "any of"
    while (const auto* need = depth < deepest ? unmet(book, change.selection, option) : nullptr) {
        const auto usable = std::find_if(need->begin(), need->end(), [&](const OptionRef& ref) {
            const auto least = least_pick(book, ref, change.selection.plan);
            return least && barriers(book, change.selection, *least).empty();
        });
        if (usable == need->end()) {
            change.blocked.push_back({Barrier::needs, {option}, *need});
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

std::optional<Conflict> conflict_between(const PriceBook& book, Index<Option> option,
                                         Index<Option> other) {
    const auto of = [&](Barrier barrier) { return Conflict{barrier, {option}, {{other}}}; };
    if (clash(book, option, other, excludes)) return of(Barrier::excludes);
    if (clash(book, option, other, same_group)) return of(Barrier::one_of);
    return std::nullopt;
}

bool holds(const PriceBook& book, const Selection& selection, OptionRef ref) {
    const Option& wanted = at(book.options, ref.option);
    // An included level counts as held: nothing has to be bought for it.
    const auto included = wanted.included_level_on(selection.plan);
    if (wanted.kind == OptionKind::levels && included && included >= ref.level) return true;
    return std::any_of(selection.picks.begin(), selection.picks.end(), [&](const Pick& pick) {
        return OptionRef{pick.option, pick.level}.meets(ref) ||
               at(book.options, pick.option).brings(ref);
    });
}

bool comes_with_plan(const PriceBook& book, const Pick& pick, Index<Plan> plan) {
    const Option& option = at(book.options, pick.option);
    if (!offered_on(option, plan)) return false;
    switch (option.kind) {
    case OptionKind::levels:
        return pick.level && option.included_level_on(plan) >= pick.level;
    case OptionKind::choice:
        return pick.choice == Index<Choice>{};
    case OptionKind::allowance:
        return true;
    case OptionKind::upgrade:
    case OptionKind::package:
        return false;
    }
    return false;
}

bool cutoff_passed(const Option& option, const Selection& selection) {
    return option.cutoff && selection.stage >= option.cutoff;
}

std::vector<Conflict> barriers(const PriceBook& book, const Selection& selection,
                               const Pick& pick) {
    const Option& option = at(book.options, pick.option);
    std::vector<Conflict> found;
    if (!offered_on(option, selection.plan)) {
        found.push_back({Barrier::not_on_plan, {pick.option}});
    } else if (!level_offered_on(option, pick.level, selection.plan)) {
        found.push_back({Barrier::not_on_plan, {pick.option, pick.level}});
    }
    for (Unkept& limit :
         unkept(book, option.only, {selection.plan, selection.elevation, selection.lot})) {
        found.push_back({Barrier::only, {pick.option}, {}, std::move(limit)});
    }
    if (cutoff_passed(option, selection) && !pick.agreed) {
        found.push_back({Barrier::past_cutoff, {pick.option}});
    }
    return found;
}

std::vector<Conflict> conflicts(const PriceBook& book, const Selection& selection) {
    std::vector<Conflict> found;
    for (std::size_t i = 0; i < selection.picks.size(); ++i) {
        const Pick& pick = selection.picks[i];
        for (Conflict& barrier : barriers(book, selection, pick)) {
            found.push_back(std::move(barrier));
        }
        if (const auto* need = unmet(book, selection, pick.option)) {
            found.push_back({Barrier::needs, {pick.option}, *need});
        }
        for (std::size_t k = 0; k < i; ++k) {
            auto clash = conflict_between(book, pick.option, selection.picks[k].option);
            if (clash) found.push_back(std::move(*clash));
        }
    }
    return found;
}

std::optional<Pick> least_pick(const PriceBook& book, OptionRef ref, Index<Plan> plan) {
    Pick pick;
    pick.option = ref.option;
    const Option& option = at(book.options, ref.option);
    if (option.kind == OptionKind::choice) pick.choice = Index<Choice>{};
    if (option.kind != OptionKind::levels) return pick;
    for (const Index<Level> level : indexes_of(option.levels)) {
        if (level < ref.level || !at(option.levels, level).price.on(plan)) continue;
        pick.level = level;
        return pick;
    }
    return std::nullopt;
}

Change with_pick(const PriceBook& book, const Selection& selection, const Pick& pick) {
    Pick anew = pick;
    anew.agreed = false; // what was agreed is the pick that is there, not this one
    Change change{selection, {}, {}, barriers(book, selection, anew)};
    if (!change.blocked.empty()) return change;
    for (const Pick& other : selection.picks) {
        if (other.option == pick.option) continue;
        if (conflict_between(book, pick.option, other.option)) {
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
        change.blocked.push_back({Barrier::needs, {pick.option}});
    }
    return change;
}

Change without_option(const PriceBook& book, const Selection& selection, Index<Option> option) {
    Change change{selection, {}, {}, {}};
    erase_option(change.selection, option);
    drop_unsupported(book, change);
    return change;
}

std::string name_of(const PriceBook& book, OptionRef ref) {
    const Option& option = at(book.options, ref.option);
    return ref.level ? option.id + ":" + at(option.levels, *ref.level).id : option.id;
}

} // namespace quoin
