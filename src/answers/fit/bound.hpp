// The most that any choice below a node of the search could be worth: a Lagrangian bound.
//
// Rules are given up and paid for instead. What an item needs, x <= sum of what meets it, and what
// cannot stand together, sum of x <= 1, each have a multiplier: worth that is moved from the items
// on the left to those on the right. What a package saves on an item that it brings is shared
// between the two. What is left is a knapsack with at most one item a group, filled by worth for
// each cent up to the greatest total of options that may be within the limits. Any multiplier not
// below zero, and any share, gives a bound; steps along the subgradient only make it tighter. All
// of it is in integers, so that it is proven and not approximate.
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "items.hpp"
#include "reach.hpp"

namespace quoin {

/// What the search has settled of an item.
enum class FitState : std::int8_t { free, in, out };
using FitStates = std::vector<FitState>;
/// Items of which at most one can be in.
using FitGroups = std::vector<std::vector<int>>;

/// What is moved between items.
struct FitShifts {
    std::vector<std::int64_t> worths; ///< billionths, for each tie
    std::vector<std::int64_t> shares; ///< cents of what a package saves, counted to the item
};

class FitBound {
  public:
    static constexpr std::int64_t whole_item = 1024;

    /// All three are to outlive it. Each item is in one group.
    FitBound(const FitItems& items, const FitGroups& groups, const FitReach& reach);

    /// The most below a node, with the shifts in hand; -1 where nothing can be within the limits.
    std::int64_t read(const FitStates& states);
    /// The same after steps that move the shifts, down to `target` if it can be had, and as long as
    /// `go_on` lets it.
    std::int64_t tighten(const FitStates& states, std::int64_t target, int steps,
                         const std::function<bool()>& go_on = {});

    [[nodiscard]] const FitShifts& shifts() const { return shifts_; }
    void set_shifts(const FitShifts& shifts) { shifts_ = shifts; }
    /// A free item and the most that any choice could be worth with it put one way.
    struct Forced {
        int item;
        bool in;
        std::int64_t most;
    };
    /// For every free item: in, and the best of each group: out. By the bound last read.
    void force_each(const FitStates& states, std::vector<Forced>& found) const;

    /// How much of an item the knapsack last filled holds, in parts of whole_item.
    [[nodiscard]] std::int64_t held(int item) const { return at(held_, item); }
    /// The same, averaged over the latest steps.
    [[nodiscard]] std::int64_t held_lately(int item) const { return at(lately_, item); }
    /// What the item brings beyond its price at the worth for each cent of the knapsack's edge.
    [[nodiscard]] Int128 gain(int item) const;

  private:
    /// sum of x over `left` <= sum of x over `right` + `free`.
    struct Tie {
        std::vector<int> left;
        std::vector<int> right;
        std::int64_t free;
    };
    struct Saving {
        int package;
        std::int64_t amount;    ///< cents, of the line beside the package
        std::int64_t extra = 0; ///< at this node: what it may save if it comes in
    };
    struct Point {
        std::int64_t cost;
        std::int64_t worth;
        int item;
    };
    struct Step {
        std::int64_t cost;
        std::int64_t worth;
        int item;
        int from; ///< the item that it takes the place of, or -1
    };

    void tie_needs(const FitGroups& groups);
    void tie_clashes(const FitGroups& groups);
    void tie_helpers();
    [[nodiscard]] std::vector<int> wider_clash(int a, int b) const;
    [[nodiscard]] bool clash(int a, int b) const;
    void note_savings(const FitPrice& price);

    void price(const FitStates& states);
    struct Cost {
        std::int64_t least; ///< if no package that is free comes in
        std::int64_t most;
    };
    Cost price_one(const FitPrice& price, std::size_t index, const FitStates& states);
    struct Share {
        std::size_t saving;
        std::int64_t amount;
    };
    [[nodiscard]] std::int64_t share_of(std::size_t saving) const;
    [[nodiscard]] Share largest_share(std::size_t index) const;
    void weigh(const FitStates& states);
    [[nodiscard]] bool is_active(const Tie& tie, const FitStates& states) const;
    void gather(const std::vector<int>& group, const FitStates& states);
    std::int64_t fill();
    void hold(const Step& step, std::int64_t part);
    void move(std::int64_t above, int damping);
    static bool denser(const Step& a, const Step& b);

    const FitItems& items_;
    const FitGroups& groups_;
    const FitReach& reach_;
    int count_;
    std::vector<Tie> ties_;
    std::vector<Saving> savings_;           ///< of selected picks, then of items in their order
    std::vector<std::size_t> first_saving_; ///< of each selected pick, then item; and the end
    FitShifts shifts_;
    std::int64_t largest_shift_ = 0; ///< so that no sum leaves 64 bits

    // Of the node in hand.
    std::vector<std::int64_t> selected_; ///< cost of the selected picks
    std::vector<std::int64_t> costs_;
    std::vector<std::int64_t> worths_;
    std::vector<std::int64_t> held_;
    std::vector<std::int64_t> lately_;
    std::vector<std::int64_t> moved_; ///< shares, after a step
    std::vector<char> active_;        ///< by tie
    std::vector<Point> points_;
    std::vector<Step> steps_;
    std::int64_t room_ = 0;   ///< for free items
    std::int64_t sure_ = 0;   ///< worth of what is in, with what the ties give
    std::int64_t most_ = 0;   ///< the greatest total that could come about
    Step edge_{1, 0, -1, -1}; ///< that no longer fits whole; worth 0: all fit
};

} // namespace quoin
