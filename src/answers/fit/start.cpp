// A good choice before the search begins, so that it can leave out what is no better: the items in
// the order of what they bring beyond their price, then one changed at a time.
#include <algorithm>

#include "search.hpp"

namespace quoin {

/// The bound at the root; -1 where nothing can be within the limits.
std::int64_t FitSearch::start() {
    constexpr int first_steps = 60;
    constexpr int steps = 300;
    found_.most = whole_units(bound_->read(states_));
    const auto tighten = [&](std::int64_t target, int count) {
        const auto watched = [&] { return go_on(); };
        const std::int64_t most = whole_units(bound_->tighten(states_, target, count, watched));
        found_.most = std::min(found_.most, most);
        bound_->read(states_);
    };
    if (found_.most >= 0) tighten(-1, first_steps);
    if (found_.most < 0) return found_.most;
    fill_up(by_gain()); // once in any case, so that a stopped search has a choice to give
    if (!found_.any || found_.worth >= found_.most || stopped_) return found_.most;
    tighten(found_.worth, steps);
    consider_filled();
    fill_up(by_gain());
    if (found_.worth < found_.most) improve();
    return found_.most;
}

/// Free items by what they bring beyond their price, most first.
std::vector<int> FitSearch::by_gain() const {
    std::vector<int> order;
    for (int i = 0; i < count_; ++i) {
        if (state(i) == State::free && item(i).wish) order.push_back(i);
    }
    std::stable_sort(order.begin(), order.end(),
                     [&](int a, int b) { return bound_->gain(a) > bound_->gain(b); });
    return order;
}

/// What is in, in cents of options, if nothing else comes in.
Money FitSearch::total_in() const {
    const auto price_of = [&](const FitPrice& price) {
        std::optional<Money> granted;
        for (const FitGrant& grant : price.beside) {
            if (state(grant.package) != State::in) continue;
            granted = granted ? std::min(*granted, grant.amount) : grant.amount;
        }
        return granted.value_or(price.alone);
    };
    Money total;
    for (const FitPrice& price : place_.items->selected) total += price_of(price);
    for (int i = 0; i < count_; ++i) {
        if (state(i) != State::in) continue;
        total += price_of(item(i).price);
        if (const auto replaced = item(i).replaces) {
            total -= price_of(place_.items->selected[replaced->position()]);
        }
    }
    return total;
}

/// An item with the cheapest of what it needs, if all of it may be within the limits.
bool FitSearch::take_with_needs(int index) {
    const std::size_t mark = trail_.size();
    bool taken = take(index);
    while (taken) {
        const Use open = open_need();
        if (open.item < 0) break;
        taken = take(cheapest(open));
    }
    if (taken) {
        const Money total = total_in();
        taken = reach_->last_at_most(total) == total;
    }
    if (!taken) undo(mark);
    return taken;
}

/// As many of the items as have room, in this order, each prefix a choice.
void FitSearch::fill_up(const std::vector<int>& order) {
    const std::size_t mark = trail_.size();
    for (const int index : order) {
        if (state(index) == State::free && take_with_needs(index)) consider();
    }
    consider();
    undo(mark);
}

/// Puts one item in, or leaves one out, and fills up again: what was in first.
void FitSearch::improve() {
    constexpr int most_tries = 400;
    const std::vector<int> order = by_gain();
    int idle = 0;
    for (int i = 0; i < most_tries && idle < static_cast<int>(order.size()); ++i, ++idle) {
        if (!go_on()) return;
        const int changed = order[static_cast<std::size_t>(i) % order.size()];
        std::vector<int> next = found_.taken;
        const auto held = std::find(next.begin(), next.end(), changed);
        const bool in = held == next.end();
        if (!in) next.erase(held);
        std::erase_if(next, [&](int one) { return !item(one).wish; });
        std::stable_sort(next.begin(), next.end(),
                         [&](int a, int b) { return bound_->gain(a) > bound_->gain(b); });
        for (const int one : order) {
            if (one != changed) next.push_back(one);
        }
        const std::size_t mark = trail_.size();
        const std::int64_t before = found_.worth;
        if (in ? take_with_needs(changed) : drop(changed)) fill_up(next);
        undo(mark);
        if (found_.worth > before) idle = -1;
    }
}

} // namespace quoin
