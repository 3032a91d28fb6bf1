// Turning wishes, and what they need, into items of the search.
#include "items.hpp"

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/home/priced_home.hpp>

namespace quoin {
namespace {

Selection only_with(const Selection& selection, std::vector<Pick> picks) {
    Selection other = selection;
    other.picks = std::move(picks);
    other.requests.clear();
    other.incentives.clear();
    return other;
}

/// Whether a selected form of an option is at least what is wished for.
bool at_least(const PriceBook& book, const Pick& selected, const Pick& wished) {
    const Option& option = at(book.options, wished.option);
    const auto quantity = [&](const Pick& pick) {
        return pick.quantity.value_or(option.quantity.usual);
    };
    switch (option.kind) {
    case OptionKind::choice:
        return selected.choice == wished.choice;
    case OptionKind::allowance:
        return selected.spend.value_or(Money{}) >= wished.spend.value_or(Money{});
    case OptionKind::levels:
        if (selected.level != wished.level) return selected.level > wished.level;
        [[fallthrough]];
    default:
        return quantity(selected) >= quantity(wished);
    }
}

class Gathering {
  public:
    Gathering(const PriceBook& book, const Inquiry& inquiry, const Selection& selection)
        : book_(book), inquiry_(inquiry), selection_(selection) {}

    FitItems gather() {
        for (const Index<Wish> wish : indexes_of(inquiry_.wishes)) add_wish(wish);
        for (std::size_t i = 0; i < found_.items.size(); ++i) add_needed(i); // grows as it goes
        for (std::size_t i = 0; i < found_.items.size(); ++i) link(i);
        for (const Pick& pick : selection_.picks) found_.selected.push_back(price_of(pick));
        for (FitItem& item : found_.items) item.price = price_of(item.pick);
        check();
        return std::move(found_);
    }

  private:
    /// Each wish is an item or set aside, and what stands against an item is mutual.
    void check() const {
        const auto wishes =
            std::count_if(found_.items.begin(), found_.items.end(),
                          [](const FitItem& item) { return item.wish.has_value(); });
        ensure_equal(static_cast<std::size_t>(wishes) + found_.aside.size(), inquiry_.wishes.size(),
                     "each wish is an item or set aside");
        for (std::size_t i = 0; i < found_.items.size(); ++i) {
            const FitItem& item = found_.items[i];
            ensure(!item.wish || item.worth > 0, "a wish is worth something");
            ensure(item.wish || (item.worth == 0 && !item.must), "what is no wish is not wanted");
            for (const int other : item.clashes) {
                const auto& back = at(found_.items, other).clashes;
                ensure(std::find(back.begin(), back.end(), static_cast<int>(i)) != back.end(),
                       "two items that cannot stand together both know it");
            }
        }
    }

    [[nodiscard]] std::optional<Index<Pick>> selected_index(Index<Option> option) const {
        for (const Index<Pick> index : indexes_of(selection_.picks)) {
            if (at(selection_.picks, index).option == option) return index;
        }
        return std::nullopt;
    }

    /// Why a pick can be in no choice on this selection, as it is and stays.
    [[nodiscard]] std::optional<Conflict> barrier(const Pick& pick) const {
        const auto barred = barriers(book_, selection_, pick);
        if (!barred.empty()) return barred.front();
        for (const Pick& other : selection_.picks) {
            if (other.option == pick.option) continue;
            if (conflict_between(book_, pick.option, other.option)) {
                return Conflict{Barrier::excludes, {pick.option}, {{other.option}}};
            }
        }
        return std::nullopt;
    }

    void add_wish(Index<Wish> index) {
        const Wish& wish = at(inquiry_.wishes, index);
        FitAside aside{index};
        const auto selected = selected_index(wish.pick.option);
        const bool choice = at(book_.options, wish.pick.option).kind == OptionKind::choice;
        if (selected && at_least(book_, at(selection_.picks, *selected), wish.pick)) {
            aside.held = true;
        } else if (selected && choice) {
            aside.why = WhyNot{WhyNot::Kind::another_choice};
        } else if (auto conflict = barrier(wish.pick)) {
            aside.why = why_not(book_, *conflict, Naming::names);
        } else {
            FitItem item;
            item.pick = wish.pick;
            item.wish = index;
            item.worth = inquiry_.worth_of(wish).billionths();
            item.must = wish.must;
            item.replaces = selected;
            found_.items.push_back(std::move(item));
            return;
        }
        found_.aside.push_back(std::move(aside));
    }

    /// The least pick that fulfils a reference, if it can be had here; as much of a selected option
    /// as is selected.
    [[nodiscard]] std::optional<Pick> helper_for(OptionRef ref) const {
        std::optional<Pick> pick = least_pick(book_, ref, selection_.plan);
        if (!pick || barrier(*pick)) return std::nullopt;
        const auto selected = selected_index(ref.option);
        if (selected) pick->quantity = at(selection_.picks, *selected).quantity;
        return pick;
    }

    void add_needed(std::size_t index) {
        const Pick needing = found_.items[index].pick;
        for (const auto& need : at(book_.options, needing.option).needs) {
            if (held(need, needing)) continue;
            for (const OptionRef& ref : need) {
                add_helper(ref);
                for (const Index<Option> package : packages_with(ref)) add_helper({package});
            }
        }
    }
    void add_helper(OptionRef ref) {
        const auto pick = helper_for(ref);
        if (!pick || is_item(*pick)) return;
        FitItem item;
        item.pick = *pick;
        item.replaces = selected_index(pick->option);
        found_.items.push_back(std::move(item));
    }
    [[nodiscard]] std::vector<Index<Option>> packages_with(OptionRef ref) const {
        std::vector<Index<Option>> packages;
        for (const Index<Option> index : indexes_of(book_.options)) {
            if (at(book_.options, index).brings(ref)) packages.push_back(index);
        }
        return packages;
    }
    [[nodiscard]] bool is_item(const Pick& pick) const {
        return std::any_of(found_.items.begin(), found_.items.end(), [&](const FitItem& item) {
            const Pick& known = item.pick;
            return known.option == pick.option && known.level == pick.level &&
                   amount_of(known) == amount_of(pick);
        });
    }
    /// What the choices of a choice have in common: they cost nothing.
    [[nodiscard]] std::pair<Decimal, Money> amount_of(const Pick& pick) const {
        return {quantity_of(at(book_.options, pick.option), pick, selection_.plan),
                pick.spend.value_or(Money{})};
    }
    /// By the selections, or by what the pick brings itself as a package.
    [[nodiscard]] bool held(const std::vector<OptionRef>& need, const Pick& pick) const {
        return std::any_of(need.begin(), need.end(), [&](const OptionRef& ref) {
            return holds(book_, selection_, ref) || fulfils(pick, ref);
        });
    }
    [[nodiscard]] bool fulfils(const Pick& pick, OptionRef ref) const {
        return holds(book_, only_with(selection_, {pick}), ref);
    }

    void link(std::size_t index) {
        FitItem& item = found_.items[index];
        for (std::size_t k = 0; k < found_.items.size(); ++k) {
            if (k == index) continue;
            const Pick& other = found_.items[k].pick;
            if (other.option == item.pick.option ||
                conflict_between(book_, item.pick.option, other.option)) {
                item.clashes.push_back(static_cast<int>(k));
            }
        }
        for (const auto& need : at(book_.options, item.pick.option).needs) {
            if (held(need, item.pick)) continue;
            std::vector<int> by;
            for (std::size_t k = 0; k < found_.items.size(); ++k) {
                const Pick& pick = found_.items[k].pick;
                const bool any = std::any_of(need.begin(), need.end(), [&](const OptionRef& ref) {
                    return fulfils(pick, ref);
                });
                if (any) by.push_back(static_cast<int>(k));
            }
            item.needs.push_back(std::move(by));
        }
    }

    [[nodiscard]] Money options_of(std::vector<Pick> picks) const {
        return price_home(book_, only_with(selection_, std::move(picks))).options;
    }

    /// Alone, or beside what the selections bring; and beside each package among the items.
    [[nodiscard]] FitPrice price_of(const Pick& pick) const {
        FitPrice price;
        const auto brings = [&](const Pick& package) {
            return package.option != pick.option &&
                   at(book_.options, package.option).brings({pick.option});
        };
        std::vector<Pick> packages;
        for (const Pick& other : selection_.picks) {
            if (brings(other)) packages.push_back(other);
        }
        const auto beside = [&](std::vector<Pick> all) {
            const Money without = options_of(all);
            all.push_back(pick);
            return options_of(all) - without;
        };
        price.alone = beside(packages);
        for (std::size_t k = 0; k < found_.items.size(); ++k) {
            if (!brings(found_.items[k].pick)) continue;
            std::vector<Pick> all = packages;
            std::erase_if(all, [&](const Pick& other) {
                return other.option == found_.items[k].pick.option;
            });
            all.push_back(found_.items[k].pick);
            price.beside.push_back({static_cast<int>(k), beside(all)});
        }
        return price;
    }

    const PriceBook& book_;
    const Inquiry& inquiry_;
    const Selection& selection_;
    FitItems found_;
};

} // namespace

Money FitPrice::least() const {
    Money least = alone;
    for (const FitGrant& grant : beside) least = std::min(least, grant.amount);
    return least;
}

Money FitPrice::most() const {
    Money most = alone;
    for (const FitGrant& grant : beside) most = std::max(most, grant.amount);
    return most;
}

FitItems fit_items(const PriceBook& book, const Inquiry& inquiry, const Selection& selection) {
    return Gathering(book, inquiry, selection).gather();
}

Selection with_items(const FitItems& items, const Selection& selection,
                     const std::vector<int>& taken) {
    Selection home = selection;
    for (const int index : taken) {
        const FitItem& item = at(items.items, index);
        if (item.replaces) {
            at(home.picks, *item.replaces) = item.pick;
        } else {
            home.picks.push_back(item.pick);
        }
    }
    return home;
}

} // namespace quoin
