// Branch and bound over the items: taking one, or leaving it, with all that follows by rule.
//
// The bound of a node is that of a knapsack with one choice a group, filled by worth for each cent
// of price up to the greatest total of options that may still be within the limits (fit_reach).
// Nothing is assumed of month or cash between two prices. A choice counts only once the price
// book's own rules and a whole quote have let it stand.
#include "fit_search.hpp"

#include <algorithm>
#include <limits>
#include <numeric>

#include <quoin/home/priced_home.hpp>

namespace quoin {

bool FitSearch::denser(const Step& a, const Step& b) {
    return Int128{a.worth} * b.cost > Int128{b.worth} * a.cost;
}

FitSearch::FitSearch(const FitPlace& place)
    : place_(place), count_(static_cast<int>(place.items->items.size())) {
    prepare_groups();
    prepare_needs();
    std::int64_t unit = 0;
    for (const FitItem& one : place.items->items) unit = std::gcd(unit, one.worth);
    unit_ = std::max<std::int64_t>(unit, 1);
    FitReach::Stretch all;
    for (const FitPrice& price : place.items->selected) {
        all.first += price.least();
        all.last += price.most();
    }
    for (const FitItem& one : place.items->items) {
        const FitPrice* gone =
            one.replaces >= 0 ? &at(place.items->selected, one.replaces) : nullptr;
        all.first += std::min(Money{}, one.price.least() - (gone ? gone->least() : Money{}));
        all.last += std::max(Money{}, one.price.most() - (gone ? gone->most() : Money{}));
    }
    if (place.limits) {
        reach_.emplace(*place.sitting, *place.rules, *place.selection, *place.limits, all);
    } else {
        reach_.emplace(all);
    }
}

/// Each item joins the first group whose every member it cannot stand with.
void FitSearch::prepare_groups() {
    const auto clash = [&](int a, int b) {
        const auto& list = item(a).clashes;
        return std::find(list.begin(), list.end(), b) != list.end();
    };
    for (int i = 0; i < count_; ++i) {
        const auto group = std::find_if(groups_.begin(), groups_.end(), [&](const auto& members) {
            return std::all_of(members.begin(), members.end(),
                               [&](int other) { return clash(i, other); });
        });
        if (group == groups_.end()) {
            groups_.push_back({i});
        } else {
            group->push_back(i);
        }
    }
}

void FitSearch::prepare_needs() {
    const auto size = static_cast<std::size_t>(count_);
    used_by_.resize(size);
    only_met_by_.resize(size);
    sharers_.assign(size, 0);
    std::vector<bool> package(size, false);
    const auto note = [&](const FitPrice& price) {
        for (const FitGrant& grant : price.beside) {
            package[static_cast<std::size_t>(grant.package)] = true;
        }
    };
    for (const FitPrice& price : place_.items->selected) note(price);
    for (int i = 0; i < count_; ++i) {
        note(item(i).price);
        for (std::size_t need = 0; need < item(i).needs.size(); ++need) {
            const auto& by = item(i).needs[need];
            for (const int one : by) at(used_by_, one).push_back({i, need});
            if (by.size() != 1 || item(by.front()).wish >= 0) continue;
            auto& list = at(only_met_by_, i);
            if (std::find(list.begin(), list.end(), by.front()) != list.end()) continue;
            list.push_back(by.front());
            ++at(sharers_, by.front());
        }
    }
    for (int i = 0; i < count_; ++i) {
        if (package[static_cast<std::size_t>(i)]) packages_.push_back(i);
    }
}

/// Puts an item in, with what follows. False where that cannot be.
bool FitSearch::take(int index) {
    if (state(index) != State::free) return state(index) == State::in;
    state(index) = State::in;
    trail_.push_back(index);
    worth_in_ += item(index).worth;
    for (const int other : item(index).clashes) {
        if (!drop(other)) return false;
    }
    for (std::size_t need = 0; need < item(index).needs.size(); ++need) {
        if (!settle(index, need)) return false;
    }
    return true;
}

bool FitSearch::drop(int index) {
    if (state(index) != State::free) return state(index) == State::out;
    state(index) = State::out;
    trail_.push_back(index);
    for (const Use& use : at(used_by_, index)) {
        if (state(use.item) == State::in) {
            if (!settle(use.item, use.need)) return false;
        } else if (state(use.item) == State::free) {
            const auto& by = item(use.item).needs[use.need];
            const bool lost = std::all_of(by.begin(), by.end(),
                                          [&](int one) { return state(one) == State::out; });
            if (lost && !drop(use.item)) return false;
        }
    }
    return true;
}

/// A need of an item that is in: met, still open, or met by the only one left.
bool FitSearch::settle(int index, std::size_t need) {
    int left = -1;
    int open = 0;
    for (const int one : item(index).needs[need]) {
        if (state(one) == State::in) return true;
        if (state(one) == State::out) continue;
        left = one;
        ++open;
    }
    if (open == 1) return take(left);
    return open > 1;
}

void FitSearch::undo(std::size_t mark) {
    while (trail_.size() > mark) {
        const int index = trail_.back();
        if (state(index) == State::in) worth_in_ -= item(index).worth;
        state(index) = State::free;
        trail_.pop_back();
    }
}

/// The least that a pick can come to, whatever becomes of the packages still free.
std::int64_t FitSearch::least(const FitPrice& price) const {
    bool granted = false;
    std::int64_t lowest = std::numeric_limits<std::int64_t>::max();
    for (const FitGrant& grant : price.beside) {
        if (state(grant.package) == State::out) continue;
        granted = granted || state(grant.package) == State::in;
        lowest = std::min(lowest, grant.amount.count());
    }
    return granted ? lowest : std::min(lowest, price.alone.count());
}

std::int64_t FitSearch::most(const FitPrice& price) const {
    bool granted = false;
    std::int64_t highest = std::numeric_limits<std::int64_t>::min();
    for (const FitGrant& grant : price.beside) {
        if (state(grant.package) == State::out) continue;
        granted = granted || state(grant.package) == State::in;
        highest = std::max(highest, grant.amount.count());
    }
    return granted ? highest : std::max(highest, price.alone.count());
}

/// What an item adds to the least total, the pick it takes the place of taken off.
std::int64_t FitSearch::least_added(int index) const {
    const FitItem& one = item(index);
    std::int64_t cost = least(one.price);
    if (one.replaces >= 0) cost -= least(at(place_.items->selected, one.replaces));
    return cost;
}

std::int64_t FitSearch::most_added(int index) const {
    const FitItem& one = item(index);
    std::int64_t cost = most(one.price);
    if (one.replaces >= 0) cost -= most(at(place_.items->selected, one.replaces));
    return cost;
}

/// The same with a share of each helper that it cannot do without, divided among all that cannot.
std::int64_t FitSearch::cost_in_bound(int index) const {
    std::int64_t cost = least_added(index);
    for (const int helper : at(only_met_by_, index)) {
        if (state(helper) != State::free) continue;
        cost += std::max<std::int64_t>(least_added(helper), 0) / at(sharers_, helper);
    }
    return cost;
}

/// What a group may bring: the upper hull of its items, as steps of falling worth for each cent.
void FitSearch::gather_group(const std::vector<int>& group) {
    points_.clear();
    std::int64_t lowest = 0;
    for (const int index : group) {
        if (state(index) != State::free) continue;
        points_.push_back({cost_in_bound(index), item(index).worth, index});
        lowest = std::min(lowest, points_.back().cost);
    }
    room_ -= lowest;
    std::int64_t base = 0; // the best that costs nothing
    for (Step& point : points_) {
        point.cost = std::max<std::int64_t>(point.cost, 0);
        at(costs_, point.item) = point.cost;
        if (point.cost == 0 && point.worth > base) {
            base = point.worth;
            densest_ = point.item;
        }
    }
    sure_worth_ += base;
    if (points_.size() > 1) {
        std::sort(points_.begin(), points_.end(), [](const Step& a, const Step& b) {
            return a.cost != b.cost ? a.cost < b.cost : a.worth > b.worth;
        });
    }
    add_hull(base);
}

void FitSearch::add_hull(std::int64_t base) {
    const std::size_t begin = steps_.size();
    std::int64_t cost = 0;
    std::int64_t worth = base;
    for (const Step& point : points_) {
        if (point.worth <= worth) continue; // dearer and no better
        Step step{point.cost - cost, point.worth - worth, point.item};
        while (steps_.size() > begin && denser(step, steps_.back())) {
            step.cost += steps_.back().cost;
            step.worth += steps_.back().worth;
            steps_.pop_back();
        }
        steps_.push_back(step);
        cost = point.cost;
        worth = point.worth;
    }
}

/// The most that any choice below this node could be worth; -1 where none can be within the limits.
std::int64_t FitSearch::bound() {
    std::int64_t low = 0;
    std::int64_t high = 0;
    for (const FitPrice& price : place_.items->selected) {
        low += least(price);
        high += most(price);
    }
    for (int i = 0; i < count_; ++i) {
        if (state(i) == State::out) continue;
        const bool in = state(i) == State::in;
        if (in) low += least_added(i);
        high += in ? most_added(i) : std::max<std::int64_t>(most_added(i), 0);
    }
    const auto top = reach_->last_at_most(Money::cents(high));
    if (!top) return -1;
    room_ = top->count() - low;
    sure_worth_ = worth_in_;
    densest_ = -1;
    steps_.clear();
    for (const auto& group : groups_) gather_group(group);
    return room_ < 0 ? -1 : fill();
}

std::int64_t FitSearch::fill() {
    std::sort(steps_.begin(), steps_.end(), denser);
    if (densest_ < 0 && !steps_.empty()) densest_ = steps_.front().item;
    std::int64_t worth = sure_worth_;
    std::int64_t room = room_;
    edge_.item = -1;
    for (const Step& step : steps_) {
        if (step.cost > room) {
            worth += multiply_divide(step.worth, room, step.cost, Rounding::down);
            edge_ = step;
            break;
        }
        room -= step.cost;
        worth += step.worth;
    }
    return worth / unit_ * unit_;
}

/// What an item brings beyond its cost at the edge's worth for each cent, times the edge's cost.
Int128 FitSearch::gain(int index) const {
    return Int128{item(index).worth} * edge_.cost - Int128{edge_.worth} * at(costs_, index);
}

/// `whole` bounds every choice below the node: room at the edge's worth for each cent, and of each
/// group the greatest gain. With an item forced in, or out, it falls by what the group then lacks;
/// where that is no better than the best so far, the item is settled.
FitSearch::Settled FitSearch::settle_group(const std::vector<int>& group, Int128 whole) {
    Int128 first = 0;
    Int128 second = 0;
    int leader = -1;
    for (const int index : group) {
        if (state(index) != State::free) continue;
        const Int128 one = gain(index);
        if (one > first) {
            second = first;
            first = one;
            leader = index;
        } else {
            second = std::max(second, one);
        }
    }
    const auto no_better = [&](Int128 bound) {
        return static_cast<std::int64_t>(bound / edge_.cost) / unit_ * unit_ <= found_.worth;
    };
    if (leader >= 0 && no_better(whole - first + second)) {
        return take(leader) ? Settled::something : Settled::dead;
    }
    for (const int index : group) {
        if (state(index) != State::free || item(index).wish < 0) continue;
        if (!no_better(whole - first + gain(index))) continue;
        return drop(index) ? Settled::something : Settled::dead;
    }
    return Settled::nothing;
}

/// Takes and drops what no better choice can lack or hold.
FitSearch::Settled FitSearch::settle_by_bound() {
    if (!found_.any || edge_.item < 0 || sparing_) return Settled::nothing;
    Int128 whole = Int128{worth_in_} * edge_.cost + Int128{edge_.worth} * room_;
    for (const auto& group : groups_) {
        Int128 first = 0;
        for (const int index : group) {
            if (state(index) == State::free) first = std::max(first, gain(index));
        }
        whole += first;
    }
    Settled settled = Settled::nothing;
    for (const auto& group : groups_) { // `whole` still bounds what is left after each
        const Settled one = settle_group(group, whole);
        if (one == Settled::dead) return one;
        if (one == Settled::something) settled = one;
    }
    return settled;
}

/// An item that is in and whose need is still open: one that may meet it; else -1.
int FitSearch::open_need() const {
    for (int i = 0; i < count_; ++i) {
        if (state(i) != State::in) continue;
        for (const auto& by : item(i).needs) {
            int left = -1;
            bool met = false;
            for (const int one : by) {
                met = met || state(one) == State::in;
                if (state(one) == State::free && left < 0) left = one;
            }
            if (!met) return left;
        }
    }
    return -1;
}

/// What meets an open need, then packages, which change other prices, then the densest wish.
int FitSearch::branch_on() const {
    const int needed = open_need();
    if (needed >= 0) return needed;
    for (const int package : packages_) {
        if (state(package) == State::free && item(package).wish >= 0) return package;
    }
    if (densest_ >= 0 && state(densest_) == State::free) return densest_;
    for (int i = 0; i < count_; ++i) {
        if (state(i) == State::free) return i;
    }
    return -1;
}

/// Nodes are counted here; the watch is told every thousand.
bool FitSearch::stop_here() {
    if (stopped_) return true;
    constexpr std::int64_t told_every = 1024;
    stopped_ = found_.nodes >= node_limit_;
    if (!stopped_ && ++found_.nodes % told_every == 0 && watch_ != nullptr && *watch_) {
        stopped_ = !(*watch_)(found_.nodes, found_.any ? found_.worth : -1);
    }
    return stopped_;
}

/// `ceiling` is the bound of the node above.
void FitSearch::explore(std::int64_t ceiling) {
    if (stop_here()) {
        open_ = std::max(open_, ceiling);
        return;
    }
    std::int64_t here = ceiling;
    for (Settled settled = Settled::something; settled == Settled::something;) {
        consider();
        if (sparing_ && found_.any) return;
        here = std::min(bound(), here);
        if (here < 0 || (found_.any && here <= found_.worth)) return;
        settled = settle_by_bound();
        if (settled == Settled::dead) return;
    }
    const int next = branch_on();
    if (next < 0) return;
    const bool eager = open_need() >= 0 || (item(next).wish >= 0 && !sparing_);
    const std::size_t mark = trail_.size();
    for (const bool in : {eager, !eager}) {
        if (in ? take(next) : drop(next)) explore(here);
        undo(mark);
        if (found_.any && sparing_) return;
        if (found_.any && here <= found_.worth) return;
    }
}

/// The choice of all that is in, if nothing it needs is open and it would be the best.
void FitSearch::consider() {
    if (found_.any && worth_in_ <= found_.worth) return;
    if (open_need() >= 0) return;
    std::vector<int> taken;
    for (int i = 0; i < count_; ++i) {
        if (state(i) == State::in) taken.push_back(i);
    }
    if (!stands(taken)) return;
    found_.any = true;
    found_.worth = worth_in_;
    found_.taken = std::move(taken);
}

/// Held to the price book and to a whole quote.
bool FitSearch::stands(const std::vector<int>& taken) {
    const PriceBook& book = place_.sitting->book();
    const Selection home = with_items(*place_.items, *place_.selection, taken);
    if (!conflicts(book, home).empty()) return false;
    return !place_.limits || within_limits(home);
}

/// A loan reads nothing of the picks but their total, so that one verdict serves every such home.
bool FitSearch::within_limits(const Selection& home) {
    const PricedHome priced = price_home(place_.sitting->book(), home);
    const auto known = verdicts_.find(priced.options.count());
    if (known != verdicts_.end()) return known->second;
    const LoanFigures figures =
        loan_figures(*place_.rules, priced, place_.sitting->inquiry().facts);
    const bool fits = figures.available() && figures.monthly.total() <= place_.limits->monthly &&
                      figures.cash.needed() <= place_.limits->cash;
    verdicts_.emplace(priced.options.count(), fits);
    return fits;
}

/// Takes out helpers that the choice can do without.
void FitSearch::tidy() {
    for (std::size_t i = found_.taken.size(); i-- > 0;) {
        if (item(found_.taken[i]).wish >= 0) continue;
        std::vector<int> fewer = found_.taken;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
        if (stands(fewer)) found_.taken = std::move(fewer);
    }
}

/// Must-haves in, and `also`. False where they cannot stand together.
bool FitSearch::begin(int also) {
    states_.assign(static_cast<std::size_t>(count_), State::free);
    costs_.assign(static_cast<std::size_t>(count_), 0);
    trail_.clear();
    worth_in_ = 0;
    for (int i = 0; i < count_; ++i) {
        const auto& needs = item(i).needs;
        const bool lost =
            std::any_of(needs.begin(), needs.end(), [](const auto& by) { return by.empty(); });
        if (lost && !drop(i)) return false;
    }
    for (int i = 0; i < count_; ++i) {
        if (item(i).must && !take(i)) return false;
    }
    return also < 0 || take(also);
}

FitFound FitSearch::run(std::int64_t nodes, const FitSearchWatch& watch) {
    found_.any = false;
    open_ = -1;
    node_limit_ = nodes;
    watch_ = &watch;
    explore(std::numeric_limits<std::int64_t>::max());
    watch_ = nullptr;
    if (found_.any) tidy();
    found_.most = found_.any ? std::max(open_, found_.worth) : open_;
    return found_;
}

FitFound FitSearch::best(std::int64_t nodes, const FitSearchWatch& watch, int also) {
    found_ = {};
    stopped_ = false;
    if (!begin(also)) return found_;
    return run(nodes, watch);
}

FitFound FitSearch::musts() {
    constexpr std::int64_t plenty = 100'000;
    found_ = {};
    stopped_ = false;
    if (!begin(-1)) return found_;
    sparing_ = true;
    const FitFound found = run(plenty, {});
    sparing_ = false;
    return found;
}

} // namespace quoin
