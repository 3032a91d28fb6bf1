// Branch and bound over the items: taking one, or leaving it, with all that follows by rule.
//
// The bound of a node is that of bound.hpp: a knapsack up to the greatest total of options that may
// still be within the limits (reach.hpp). Nothing is assumed of month or cash between two prices.
// A choice counts only once the price book's own rules and a whole quote have let it stand.
#include "search.hpp"

#include <algorithm>
#include <limits>
#include <numeric>

#include <quoin/exact/broken.hpp>
#include <quoin/home/priced_home.hpp>

namespace quoin {

FitSearch::FitSearch(const FitPlace& place)
    : place_(place), count_(static_cast<int>(place.items->items.size())) {
    prepare_groups();
    prepare_needs();
    prepare_less();
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
            one.replaces ? &place.items->selected[one.replaces->position()] : nullptr;
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

/// Lower levels of what is no wish, the lowest first.
void FitSearch::prepare_less() {
    less_of_.resize(static_cast<std::size_t>(count_));
    for (int i = 0; i < count_; ++i) {
        if (item(i).wish) continue;
        for (int k = 0; k < count_; ++k) {
            const Pick& other = item(k).pick;
            if (other.option == item(i).pick.option && other.level < item(i).pick.level) {
                at(less_of_, i).push_back(k);
            }
        }
        std::sort(at(less_of_, i).begin(), at(less_of_, i).end(),
                  [&](int a, int b) { return item(a).pick.level < item(b).pick.level; });
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
    for (const auto& by : item(index).needs) {
        for (const int one : by) {
            if (!drop_unused(one)) return false;
        }
    }
    return true;
}

/// What is no wish and can no longer be needed stays out. False where it is in already.
bool FitSearch::drop_unused(int index) {
    if (item(index).wish || state(index) == State::out) return true;
    const auto& users = at(used_by_, index);
    const bool needed = std::any_of(users.begin(), users.end(),
                                    [&](const Use& use) { return state(use.item) != State::out; });
    return needed || drop(index);
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
        if (is_enough()) return false;
        here = std::min(here, whole_units(bound_->tighten(states_, wanted() - 1, steps)));
        if (here < wanted()) return false;
        settled = false;
        if (!found_.any || aim_ == Aim::any) break;
        bound_->read(states_); // with the best shifts
        consider_filled();
        bound_->force_each(states_, forced_);
        for (const FitBound::Forced& one : forced_) {
            if (state(one.item) != State::free) continue;
            if (whole_units(one.most) >= wanted()) continue;
            if (!(one.in ? drop(one.item) : take(one.item))) return false;
            settled = true;
        }
    }
    return true;
}

/// What a choice is to be worth to be of use.
std::int64_t FitSearch::wanted() const {
    if (!found_.any) return 0;
    return aim_ == Aim::least ? found_.worth : found_.worth + 1;
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

/// Tells the watch.
bool FitSearch::go_on() {
    if (!stopped_ && watch_ != nullptr && *watch_) stopped_ = !(*watch_)(found_);
    return !stopped_;
}

/// Nodes are counted here; the watch is told at the first, and now and then.
bool FitSearch::stop_here() {
    constexpr std::int64_t told_every = 16;
    stopped_ = stopped_ || found_.nodes >= node_limit_;
    if (stopped_) return true;
    return found_.nodes++ % told_every == 0 && !go_on();
}

/// `ceiling` is the bound of the node above.
void FitSearch::explore(std::int64_t ceiling) {
    constexpr int steps = 4;
    if (stop_here()) { // its own bound, since that of the node above says less
        const std::int64_t own =
            aim_ == Aim::most ? bound_->tighten(states_, wanted() - 1, steps) : ceiling;
        open_ = std::max(open_, std::min(ceiling, whole_units(own)));
        return;
    }
    std::int64_t here = ceiling;
    const bool sparing = aim_ == Aim::any;
    if (!narrow(here, sparing ? 0 : steps)) return;
    const int next = sparing ? spare_branch() : branch_on();
    if (next < 0) return;
    const bool eager = sparing ? open_need().item >= 0 || item(next).price.most() < Money{}
                               : 2 * bound_->held_lately(next) >= FitBound::whole_item;
    const std::size_t mark = trail_.size();
    const FitShifts shifts = bound_->shifts();
    for (const bool in : {eager, !eager}) {
        bound_->set_shifts(shifts);
        if (in ? take(next) : drop(next)) explore(here);
        undo(mark);
        if (is_enough() || here < wanted()) return;
    }
}

/// The choice of all that is in, if nothing it needs is open and it would be the best.
void FitSearch::consider() {
    if (worth_in_ < wanted() || open_need().item >= 0) return;
    std::vector<int> taken;
    for (int i = 0; i < count_; ++i) {
        if (state(i) == State::in) taken.push_back(i);
    }
    propose(std::move(taken));
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
    if (worth < wanted()) return;
    for (const int index : taken) {
        const auto& needs = item(index).needs;
        const auto& clashes = item(index).clashes;
        if (std::any_of(clashes.begin(), clashes.end(), holds)) return;
        const bool met = std::all_of(needs.begin(), needs.end(), [&](const auto& by) {
            return std::any_of(by.begin(), by.end(), holds);
        });
        if (!met) return;
    }
    propose(std::move(taken));
}

/// Held to the price book and to a whole quote; the best so far, if it stands and is better.
void FitSearch::propose(std::vector<int> taken) {
    leave_unneeded(taken);
    const Selection home = with_items(*place_.items, *place_.selection, taken);
    if (!conflicts(place_.sitting->book(), home).empty()) return;
    if (place_.limits) {
        const std::optional<FitLimits>& figures = figures_of(home);
        if (!figures || !within_limits(*figures)) return;
        ensure(may_reach(home), "no total falls away at which a home is within the limits");
        const bool cheaper =
            figures->monthly < found_.figures.monthly ||
            (figures->monthly == found_.figures.monthly && figures->cash < found_.figures.cash);
        if (aim_ == Aim::least && !cheaper) return;
        found_.figures = *figures;
    }
    found_.any = true;
    found_.worth = 0;
    for (const int index : taken) found_.worth += item(index).worth;
    found_.taken = std::move(taken);
    if (aim_ == Aim::least) reach_->keep_cheaper(found_.figures);
}

/// Takes out what is no wish and what the others do without, and has as little of it as will do.
void FitSearch::leave_unneeded(std::vector<int>& taken) const {
    const auto stand = [&](const std::vector<int>& these) {
        const auto is_in = [&](int one) {
            return std::find(these.begin(), these.end(), one) != these.end();
        };
        return std::all_of(these.begin(), these.end(), [&](int one) {
            const auto& needs = item(one).needs;
            return std::all_of(needs.begin(), needs.end(), [&](const auto& by) {
                return std::any_of(by.begin(), by.end(), is_in);
            });
        });
    };
    for (bool again = true; again;) {
        again = false;
        for (std::size_t i = 0; i < taken.size() && !again; ++i) {
            if (item(taken[i]).wish) continue;
            std::vector<int> other = taken;
            other.erase(other.begin() + static_cast<std::ptrdiff_t>(i));
            again = stand(other);
            if (!again) other = taken;
            for (const int less : at(less_of_, taken[i])) {
                if (again) break;
                other[i] = less;
                again = stand(other);
            }
            if (again) taken = std::move(other);
        }
    }
}

bool FitSearch::within_limits(const FitLimits& figures) const {
    return figures.monthly <= place_.limits->monthly && figures.cash <= place_.limits->cash;
}

/// Whether the totals that may be within the limits, and be better, hold a home's that is.
bool FitSearch::may_reach(const Selection& home) const {
    if (aim_ == Aim::least) return true; // of these, only the cheaper are kept
    const Money total = price_home(place_.sitting->book(), home).options;
    return reach_->last_at_most(total) == total;
}

/// A loan reads nothing of the picks but their total, so that one answer serves every such home.
const std::optional<FitLimits>& FitSearch::figures_of(const Selection& home) {
    const PricedHome priced = price_home(place_.sitting->book(), home);
    const auto known = known_.find(priced.options.count());
    if (known != known_.end()) return known->second;
    const LoanFigures loan = loan_figures(*place_.rules, priced, place_.sitting->inquiry().facts);
    std::optional<FitLimits> figures;
    if (loan.available()) figures = FitLimits{loan.monthly.total(), loan.cash.needed()};
    return known_.emplace(priced.options.count(), figures).first->second;
}

/// Must-haves in, and what else has to be. False where they cannot stand together.
bool FitSearch::begin() {
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
        if (!drop_unused(i)) return false;
    }
    return also_ < 0 || take(also_);
}

/// From the root. What was found before stands, for `least` to begin from.
void FitSearch::run(Aim aim, std::int64_t nodes, const FitSearchWatch& watch) {
    aim_ = aim;
    open_ = -1;
    stopped_ = false;
    node_limit_ = nodes;
    watch_ = &watch;
    std::int64_t most = -1;
    if (begin()) {
        most = aim == Aim::any     ? std::numeric_limits<std::int64_t>::max()
               : aim == Aim::least ? found_.worth
                                   : start();
    }
    if (most >= 0) explore(most);
    watch_ = nullptr;
    ensure(aim != Aim::most || !found_.any || found_.worth <= most,
           "no choice is worth more than the bound of all");
}

FitFound FitSearch::best(std::int64_t nodes, const FitSearchWatch& watch, int also) {
    found_ = {};
    also_ = also;
    run(Aim::most, nodes, watch);
    found_.most = found_.any ? std::max(open_, found_.worth) : open_;
    return found_;
}

FitFound FitSearch::cheapest(std::int64_t nodes, const FitSearchWatch& watch) {
    reach_->keep_cheaper(found_.figures);
    run(Aim::least, nodes, watch);
    reach_->keep_all();
    found_.cheapest = open_ < 0;
    return found_;
}

FitFound FitSearch::any(const FitSearchWatch& watch) {
    constexpr std::int64_t plenty = 30'000;
    found_ = {};
    also_ = -1;
    run(Aim::any, plenty, watch);
    found_.most = found_.any ? std::max(open_, found_.worth) : open_;
    return found_;
}

} // namespace quoin
