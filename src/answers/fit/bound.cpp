// Giving up rules for a price, filling the knapsack that is left, and moving the prices.
#include "bound.hpp"

#include <algorithm>
#include <limits>

#include <quoin/exact/broken.hpp>

namespace quoin {

bool FitBound::denser(const Step& a, const Step& b) {
    return Int128{a.worth} * b.cost > Int128{b.worth} * a.cost;
}

FitBound::FitBound(const FitItems& items, const FitGroups& groups, const FitReach& reach)
    : items_(items), groups_(groups), reach_(reach), count_(static_cast<int>(items.items.size())) {
    tie_needs(groups);
    tie_clashes(groups);
    tie_helpers();
    for (const FitPrice& price : items.selected) note_savings(price);
    for (const FitItem& item : items.items) note_savings(item.price);
    first_saving_.push_back(savings_.size());
    shifts_.worths.assign(ties_.size(), 0);
    shifts_.shares.assign(savings_.size(), std::numeric_limits<std::int64_t>::max());
    const auto size = static_cast<std::size_t>(count_);
    selected_.assign(items.selected.size(), 0);
    for (auto* list : {&costs_, &worths_, &held_, &lately_}) list->assign(size, 0);
    active_.assign(ties_.size(), 0);
    std::int64_t places = 1;
    for (const Tie& tie : ties_) {
        places += static_cast<std::int64_t>(tie.left.size() + tie.right.size() + 1);
    }
    largest_shift_ = std::numeric_limits<std::int64_t>::max() / 4 / places;
}

bool FitBound::clash(int a, int b) const {
    const auto& list = at(items_.items, a).clashes;
    return std::find(list.begin(), list.end(), b) != list.end();
}

/// Items of one group that need the same are tied together: at most one of them is in.
void FitBound::tie_needs(const FitGroups& groups) {
    for (const auto& group : groups) {
        const std::size_t begin = ties_.size();
        for (const int index : group) {
            for (std::vector<int> by : at(items_.items, index).needs) {
                std::erase_if(by, [&](int one) { return clash(index, one); });
                if (by.empty()) continue; // it can never be in: the search drops it
                const auto same =
                    std::find_if(ties_.begin() + static_cast<std::ptrdiff_t>(begin), ties_.end(),
                                 [&](const Tie& tie) { return tie.right == by; });
                if (same == ties_.end()) {
                    ties_.push_back({{index}, std::move(by), 0});
                } else if (same->left.back() != index) {
                    same->left.push_back(index);
                }
            }
        }
    }
}

/// Clashes across groups, each within as large a set as can be found of items that all clash.
void FitBound::tie_clashes(const FitGroups& groups) {
    std::vector<int> group_of(static_cast<std::size_t>(count_), 0);
    for (std::size_t i = 0; i < groups.size(); ++i) {
        for (const int index : groups[i]) at(group_of, index) = static_cast<int>(i);
    }
    std::size_t grouped = 0;
    for (const auto& group : groups) grouped += group.size();
    ensure_equal(grouped, static_cast<std::size_t>(count_), "each item is in one group");
    const std::size_t begin = ties_.size();
    for (int a = 0; a < count_; ++a) {
        for (const int b : at(items_.items, a).clashes) {
            if (b < a || at(group_of, a) == at(group_of, b)) continue;
            const bool known =
                std::any_of(ties_.begin() + static_cast<std::ptrdiff_t>(begin), ties_.end(),
                            [&](const Tie& tie) {
                                const auto& set = tie.left;
                                return std::find(set.begin(), set.end(), a) != set.end() &&
                                       std::find(set.begin(), set.end(), b) != set.end();
                            });
            if (!known) ties_.push_back({wider_clash(a, b), {}, 1});
        }
    }
}

/// What is no wish is in only where something that needs it is: of weight where it saves money.
void FitBound::tie_helpers() {
    std::vector<std::vector<int>> users(static_cast<std::size_t>(count_));
    std::vector<bool> saves(static_cast<std::size_t>(count_));
    for (int i = 0; i < count_; ++i) {
        const FitItem& item = at(items_.items, i);
        for (const auto& by : item.needs) {
            for (const int one : by) {
                auto& known = at(users, one);
                if (known.empty() || known.back() != i) known.push_back(i);
            }
        }
        if (item.price.least() < Money{}) saves[static_cast<std::size_t>(i)] = true;
    }
    const auto note_packages = [&](const FitPrice& price) {
        for (const FitGrant& grant : price.beside) {
            if (grant.amount < price.alone) saves[static_cast<std::size_t>(grant.package)] = true;
        }
    };
    for (const FitPrice& price : items_.selected) note_packages(price);
    for (const FitItem& item : items_.items) note_packages(item.price);
    for (int i = 0; i < count_; ++i) {
        if (at(items_.items, i).wish || !saves[static_cast<std::size_t>(i)]) continue;
        ties_.push_back({{i}, at(users, i), 0});
    }
}

std::vector<int> FitBound::wider_clash(int a, int b) const {
    std::vector<int> set{a, b};
    for (const int other : at(items_.items, a).clashes) {
        const bool all = std::all_of(set.begin(), set.end(),
                                     [&](int one) { return one != other && clash(one, other); });
        if (all) set.push_back(other);
    }
    return set;
}

void FitBound::note_savings(const FitPrice& price) {
    first_saving_.push_back(savings_.size());
    for (const FitGrant& grant : price.beside) {
        savings_.push_back({grant.package, grant.amount.count()});
    }
}

/// What a pick comes to beside the packages that are in; `extra` is what each free one may save.
FitBound::Cost FitBound::price_one(const FitPrice& price, std::size_t index,
                                   const FitStates& states) {
    const std::size_t begin = first_saving_[index];
    const std::size_t end = first_saving_[index + 1];
    if (begin == end) return {price.alone.count(), price.alone.count()};
    bool granted = false;
    Cost cost{std::numeric_limits<std::int64_t>::max(), std::numeric_limits<std::int64_t>::min()};
    for (std::size_t k = begin; k < end; ++k) {
        const FitState package = at(states, savings_[k].package);
        if (package == FitState::out) continue;
        cost.most = std::max(cost.most, savings_[k].amount);
        if (package != FitState::in) continue;
        granted = true;
        cost.least = std::min(cost.least, savings_[k].amount);
    }
    if (!granted) {
        cost.least = price.alone.count();
        cost.most = std::max(cost.most, price.alone.count());
    }
    for (std::size_t k = begin; k < end; ++k) {
        const bool may = at(states, savings_[k].package) == FitState::free;
        savings_[k].extra = may ? std::max<std::int64_t>(cost.least - savings_[k].amount, 0) : 0;
    }
    return cost;
}

/// What a free package saves goes to the package as far as it is not shared to the item. Of several
/// packages that bring an item only one saves, so that to the item no more than the largest share
/// counts: s <= sum of (saving - share) over the packages + largest share, whichever of them it is.
void FitBound::price(const FitStates& states) {
    room_ = 0;
    most_ = 0;
    std::fill(costs_.begin(), costs_.end(), 0);
    const auto save = [&](std::size_t index, int item) {
        for (std::size_t k = first_saving_[index]; k < first_saving_[index + 1]; ++k) {
            const std::int64_t share = item < 0 ? 0 : share_of(k);
            at(costs_, savings_[k].package) -= savings_[k].extra - share;
        }
        if (item >= 0) at(costs_, item) -= largest_share(index).amount;
    };
    for (std::size_t i = 0; i < items_.selected.size(); ++i) {
        const Cost cost = price_one(items_.selected[i], i, states);
        selected_[i] = cost.least;
        room_ -= cost.least;
        most_ += cost.most;
        save(i, -1);
    }
    for (int i = 0; i < count_; ++i) {
        const FitState state = at(states, i);
        if (state == FitState::out) continue;
        const FitItem& item = at(items_.items, i);
        const std::size_t index = items_.selected.size() + static_cast<std::size_t>(i);
        const Cost cost = price_one(item.price, index, states);
        const std::int64_t gone = item.replaces ? selected_[item.replaces->position()] : 0;
        at(costs_, i) += cost.least - gone;
        const std::int64_t more = cost.most - gone;
        most_ += state == FitState::in ? more : std::max<std::int64_t>(more, 0);
        save(index, state == FitState::in ? -1 : i);
    }
}

std::int64_t FitBound::share_of(std::size_t saving) const {
    return std::min(savings_[saving].extra, shifts_.shares[saving]);
}

/// Of the savings on a pick; 0 where there are none.
FitBound::Share FitBound::largest_share(std::size_t index) const {
    Share largest{first_saving_[index], 0};
    for (std::size_t k = first_saving_[index]; k < first_saving_[index + 1]; ++k) {
        if (share_of(k) > largest.amount) largest = {k, share_of(k)};
    }
    return largest;
}

/// A tie that what is in has settled already, or cannot break, moves nothing.
bool FitBound::is_active(const Tie& tie, const FitStates& states) const {
    int open = 0;
    bool in = false;
    for (const int one : tie.left) {
        open += at(states, one) == FitState::free;
        in = in || at(states, one) == FitState::in;
    }
    if (tie.free > 0) return !in && open > 1;
    const bool met = std::any_of(tie.right.begin(), tie.right.end(),
                                 [&](int one) { return at(states, one) == FitState::in; });
    return !met && (in || open > 0);
}

void FitBound::weigh(const FitStates& states) {
    sure_ = 0;
    for (int i = 0; i < count_; ++i) at(worths_, i) = at(items_.items, i).worth;
    for (std::size_t i = 0; i < ties_.size(); ++i) {
        const Tie& tie = ties_[i];
        const bool active = is_active(tie, states);
        active_[i] = active ? 1 : 0;
        if (!active) continue;
        const std::int64_t shift = shifts_.worths[i];
        for (const int one : tie.left) at(worths_, one) -= shift;
        for (const int one : tie.right) at(worths_, one) += shift;
        sure_ += shift * tie.free;
    }
}

void FitBound::hold(const Step& step, std::int64_t part) {
    if (step.item >= 0) at(held_, step.item) += part;
    if (step.from >= 0) at(held_, step.from) -= part;
}

/// What a group may bring, none of it at first: the upper hull of nothing and its items, as steps
/// of falling worth for each cent.
void FitBound::gather(const std::vector<int>& group, const FitStates& states) {
    points_.clear();
    points_.push_back({0, 0, -1});
    for (const int index : group) {
        if (at(states, index) != FitState::free) continue;
        points_.push_back({at(costs_, index), at(worths_, index), index});
    }
    if (points_.size() > 1) {
        std::sort(points_.begin(), points_.end(), [](const Point& a, const Point& b) {
            return a.cost != b.cost ? a.cost < b.cost : a.worth > b.worth;
        });
    }
    const std::size_t begin = steps_.size();
    Point last = points_.front();
    room_ -= last.cost;
    sure_ += last.worth;
    hold({0, 0, last.item, -1}, whole_item);
    for (const Point& point : points_) {
        if (point.worth <= last.worth) continue; // dearer and no better
        Step step{point.cost - last.cost, point.worth - last.worth, point.item, last.item};
        while (steps_.size() > begin && denser(step, steps_.back())) {
            step.cost += steps_.back().cost;
            step.worth += steps_.back().worth;
            step.from = steps_.back().from;
            steps_.pop_back();
        }
        steps_.push_back(step);
        last = point;
    }
}

std::int64_t FitBound::fill() {
    std::sort(steps_.begin(), steps_.end(), denser);
    std::int64_t worth = sure_;
    std::int64_t room = room_;
    edge_ = {1, 0, -1, -1};
    for (const Step& step : steps_) {
        if (step.cost > room) {
            worth += multiply_divide(step.worth, room, step.cost, Rounding::down);
            hold(step, multiply_divide(whole_item, room, step.cost, Rounding::down));
            edge_ = step;
            break;
        }
        room -= step.cost;
        worth += step.worth;
        hold(step, whole_item);
    }
    return worth;
}

std::int64_t FitBound::read(const FitStates& states) {
    price(states);
    const auto top = reach_.last_at_most(Money::cents(most_));
    if (!top) {
        room_ = -1;
        return -1;
    }
    weigh(states);
    room_ += top->count();
    std::fill(held_.begin(), held_.end(), 0);
    steps_.clear();
    for (int i = 0; i < count_; ++i) {
        if (at(states, i) != FitState::in) continue;
        room_ -= at(costs_, i);
        sure_ += at(worths_, i);
        at(held_, i) = whole_item;
    }
    const std::int64_t room = room_;
    const std::int64_t sure = sure_;
    for (const auto& group : groups_) gather(group, states);
    if (room_ < 0) return -1;
    const std::int64_t most = std::max<std::int64_t>(fill(), -1);
    room_ = room; // before the groups, for force_each
    sure_ = sure;
    return most;
}

/// One step along the subgradient: as long as `above` what is aimed at, halved `damping` times.
void FitBound::move(std::int64_t above, int damping) {
    const auto slack = [&](const Tie& tie) {
        std::int64_t sum = tie.free * whole_item;
        for (const int one : tie.left) sum -= at(held_, one);
        for (const int one : tie.right) sum += at(held_, one);
        return sum;
    };
    const auto more_held = [&](std::size_t index, std::size_t saving) {
        const bool counts = largest_share(index).saving == saving;
        const int item = static_cast<int>(index - items_.selected.size());
        return (counts ? at(held_, item) : 0) - at(held_, savings_[saving].package);
    };
    std::int64_t square = 0;
    for (std::size_t i = 0; i < ties_.size(); ++i) {
        if (!active_[i]) continue;
        const std::int64_t by = slack(ties_[i]);
        if (by < 0 || shifts_.worths[i] > 0) square += by * by;
    }
    for (std::size_t i = items_.selected.size(); i + 1 < first_saving_.size(); ++i) {
        for (std::size_t k = first_saving_[i]; k < first_saving_[i + 1]; ++k) {
            if (savings_[k].extra > 0) square += more_held(i, k) * more_held(i, k);
        }
    }
    if (square == 0) return;
    const auto length = [&](std::int64_t by) {
        const Int128 step = (Int128{above} * by * whole_item / square) >> damping;
        return static_cast<std::int64_t>(std::clamp<Int128>(step, -largest_shift_, largest_shift_));
    };
    for (std::size_t i = 0; i < ties_.size(); ++i) {
        if (!active_[i]) continue;
        shifts_.worths[i] = std::clamp<std::int64_t>(shifts_.worths[i] - length(slack(ties_[i])), 0,
                                                     largest_shift_);
    }
    if (edge_.worth == 0) return;
    moved_ = shifts_.shares;
    for (std::size_t i = items_.selected.size(); i + 1 < first_saving_.size(); ++i) {
        for (std::size_t k = first_saving_[i]; k < first_saving_[i + 1]; ++k) {
            if (savings_[k].extra == 0) continue;
            const Int128 by = Int128{length(more_held(i, k))} * edge_.cost / edge_.worth;
            moved_[k] = static_cast<std::int64_t>(
                std::clamp<Int128>(share_of(k) - by, 0, savings_[k].extra));
        }
    }
    shifts_.shares = moved_;
}

std::int64_t FitBound::tighten(const FitStates& states, std::int64_t target, int steps,
                               const std::function<bool()>& go_on) {
    constexpr int patience = 5;
    FitShifts best = shifts_;
    std::int64_t least = read(states);
    std::int64_t here = least;
    int damping = 0;
    int idle = 0;
    for (int i = 0; i < steps && least > target && (!go_on || go_on()); ++i) {
        move(here - std::max(target, std::int64_t{0}), damping);
        here = read(states);
        for (int k = 0; k < count_; ++k) at(lately_, k) += (at(held_, k) - at(lately_, k)) / 8;
        if (here < least) {
            least = here;
            best = shifts_;
            idle = 0;
        } else if (++idle == patience) {
            ++damping;
            idle = 0;
            shifts_ = best;
        }
    }
    shifts_ = best;
    return least;
}

Int128 FitBound::gain(int item) const {
    return Int128{at(worths_, item)} * edge_.cost - Int128{edge_.worth} * at(costs_, item);
}

/// Room at the edge's worth for each cent, and of each group the greatest gain, bound every choice;
/// with an item forced in, or out, the bound falls by what the group then lacks.
void FitBound::force_each(const FitStates& states, std::vector<Forced>& found) const {
    struct Two {
        Int128 first = 0;
        Int128 second = 0;
        int leader = -1;
    };
    const auto two_of = [&](const std::vector<int>& group) {
        Two two;
        for (const int index : group) {
            if (at(states, index) != FitState::free) continue;
            const Int128 one = gain(index);
            if (one > two.first) {
                two = {one, two.first, index};
            } else {
                two.second = std::max(two.second, one);
            }
        }
        return two;
    };
    found.clear();
    Int128 whole = Int128{sure_} * edge_.cost + Int128{edge_.worth} * room_;
    for (const auto& group : groups_) whole += two_of(group).first;
    const auto note = [&](int item, bool in, Int128 most) {
        const Int128 worth = most < 0 ? -1 : most / edge_.cost;
        found.push_back({item, in, static_cast<std::int64_t>(worth)});
    };
    for (const auto& group : groups_) {
        const Two two = two_of(group);
        if (two.leader >= 0) note(two.leader, false, whole - two.first + two.second);
        for (const int index : group) {
            if (at(states, index) != FitState::free) continue;
            note(index, true, whole - two.first + gain(index));
        }
    }
}

} // namespace quoin
