// Branch and bound over the items: taking one, or leaving it, with all that follows by rule.
//
// The bound of a node is that of fit_bound: a knapsack up to the greatest total of options that may
// still be within the limits (fit_reach). Nothing is assumed of month or cash between two prices.
// A choice counts only once the price book's own rules and a whole quote have let it stand.
#include "fit_search.hpp"

#include <algorithm>
#include <limits>
#include <numeric>

#include <quoin/home/priced_home.hpp>

namespace quoin {

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
    bound_.emplace(*place.items, groups_, *reach_);
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
    used_by_.resize(static_cast<std::size_t>(count_));
    for (int i = 0; i < count_; ++i) {
        for (std::size_t need = 0; need < item(i).needs.size(); ++need) {
            for (const int one : item(i).needs[need]) at(used_by_, one).push_back({i, need});
        }
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

/// The most that a choice below this node could be worth, and what that settles; false where none
/// can be better than the best so far. `here` falls to the bound.
bool FitSearch::narrow(std::int64_t& here, int steps) {
    for (bool settled = true; settled;) {
        consider();
        if (sparing_ && found_.any) return false;
        const std::int64_t target = found_.any ? found_.worth : -1;
        here = std::min(here, whole_units(bound_->tighten(states_, target, steps)));
        if (here < 0 || (found_.any && here <= found_.worth)) return false;
        settled = false;
        if (!found_.any || sparing_) break;
        bound_->read(states_); // with the best shifts
        consider_filled();
        bound_->force_each(states_, forced_);
        for (const FitBound::Forced& one : forced_) {
            if (state(one.item) != State::free) continue;
            if (whole_units(one.most) > found_.worth) continue;
            if (!(one.in ? drop(one.item) : take(one.item))) return false;
            settled = true;
        }
    }
    return true;
}

std::int64_t FitSearch::whole_units(std::int64_t worth) const {
    return worth < 0 ? -1 : worth / unit_ * unit_;
}

/// An item that is in, and a need of it that is still open; else item -1.
FitSearch::Use FitSearch::open_need() const {
    for (int i = 0; i < count_; ++i) {
        if (state(i) != State::in) continue;
        const auto& needs = item(i).needs;
        for (std::size_t need = 0; need < needs.size(); ++need) {
            const bool met = std::any_of(needs[need].begin(), needs[need].end(),
                                         [&](int one) { return state(one) == State::in; });
            if (!met) return {i, need};
        }
    }
    return {-1, 0};
}

/// The cheapest free item that meets a need.
int FitSearch::cheapest(const Use& open) const {
    int best = -1;
    for (const int one : item(open.item).needs[open.need]) {
        if (state(one) != State::free) continue;
        if (best < 0 || item(one).price.least() < item(best).price.least()) best = one;
    }
    return best;
}

/// Where any choice will do: the cheapest that meets an open need, then whatever is free.
int FitSearch::spare_branch() const {
    const Use open = open_need();
    if (open.item >= 0) return cheapest(open);
    const auto one = std::find(states_.begin(), states_.end(), State::free);
    return one == states_.end() ? -1 : static_cast<int>(one - states_.begin());
}

/// The free item that the bound is least sure of: lately held about half of the time.
int FitSearch::branch_on() const {
    int best = -1;
    std::int64_t unsure = -1;
    for (int i = 0; i < count_; ++i) {
        if (state(i) != State::free) continue;
        const std::int64_t held = bound_->held_lately(i);
        const std::int64_t here = std::min(held, FitBound::whole_item - held);
        if (here > unsure) {
            best = i;
            unsure = here;
        }
    }
    return best;
}

/// Nodes are counted here; the watch is told at the first, and now and then.
bool FitSearch::stop_here() {
    if (stopped_) return true;
    constexpr std::int64_t told_every = 256;
    stopped_ = found_.nodes >= node_limit_;
    if (stopped_) return true;
    if (found_.nodes++ % told_every == 0 && watch_ != nullptr && *watch_) {
        stopped_ = !(*watch_)(found_);
    }
    return stopped_;
}

/// `ceiling` is the bound of the node above.
void FitSearch::explore(std::int64_t ceiling) {
    if (stop_here()) {
        open_ = std::max(open_, ceiling);
        return;
    }
    constexpr int steps = 4;
    std::int64_t here = ceiling;
    if (!narrow(here, sparing_ ? 0 : steps)) return;
    const int next = sparing_ ? spare_branch() : branch_on();
    if (next < 0) return;
    const bool eager = sparing_ ? open_need().item >= 0 || item(next).price.most() < Money{}
                                : 2 * bound_->held_lately(next) >= FitBound::whole_item;
    const std::size_t mark = trail_.size();
    const FitShifts shifts = bound_->shifts();
    for (const bool in : {eager, !eager}) {
        bound_->set_shifts(shifts);
        if (in ? take(next) : drop(next)) explore(here);
        undo(mark);
        if (found_.any && (sparing_ || here <= found_.worth)) return;
    }
}

/// The choice of all that is in, if nothing it needs is open and it would be the best.
void FitSearch::consider() {
    if (found_.any && worth_in_ <= found_.worth) return;
    if (open_need().item >= 0) return;
    std::vector<int> taken;
    for (int i = 0; i < count_; ++i) {
        if (state(i) == State::in) taken.push_back(i);
    }
    if (!stands(taken)) return;
    found_.any = true;
    found_.worth = worth_in_;
    found_.taken = std::move(taken);
}

/// The choice that the knapsack holds whole, if it would be the best and obeys the rules.
void FitSearch::consider_filled() {
    std::vector<int> taken;
    std::int64_t worth = 0;
    const auto holds = [&](int index) { return bound_->held(index) == FitBound::whole_item; };
    for (int i = 0; i < count_; ++i) {
        if (!holds(i)) continue;
        taken.push_back(i);
        worth += item(i).worth;
    }
    if (worth <= found_.worth) return;
    for (const int index : taken) {
        const auto& needs = item(index).needs;
        const auto& clashes = item(index).clashes;
        if (std::any_of(clashes.begin(), clashes.end(), holds)) return;
        const bool met = std::all_of(needs.begin(), needs.end(), [&](const auto& by) {
            return std::any_of(by.begin(), by.end(), holds);
        });
        if (!met) return;
    }
    if (!stands(taken)) return;
    found_.worth = worth;
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
    const std::int64_t most = sparing_ ? std::numeric_limits<std::int64_t>::max() : start();
    found_.most = most;
    if (most >= 0) explore(most);
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

FitFound FitSearch::any() {
    constexpr std::int64_t plenty = 30'000;
    found_ = {};
    stopped_ = false;
    if (!begin(-1)) return found_;
    sparing_ = true;
    const FitFound found = run(plenty, {});
    sparing_ = false;
    return found;
}

} // namespace quoin
