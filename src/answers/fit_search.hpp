// The search for the choice of the greatest worth, by branch and bound.
#pragma once

#include <cstdint>
#include <unordered_map>
#include <vector>

#include "fit_items.hpp"
#include "fit_reach.hpp"

namespace quoin {

/// Where a search takes place.
struct FitPlace {
    const Sitting* sitting = nullptr;
    const ScenarioRules* rules = nullptr;
    const Selection* selection = nullptr;
    const FitItems* items = nullptr;
    std::optional<FitLimits> limits; ///< nothing: rules alone decide
};

struct FitFound {
    bool any = false;
    std::vector<int> taken; ///< items, wishes first
    std::int64_t worth = 0; ///< billionths
    std::int64_t most = -1; ///< that any choice could be worth; -1: proven that there is none
    std::int64_t nodes = 0;
    [[nodiscard]] bool proven() const { return any ? most == worth : most < 0; }
};

/// Told the nodes and the best worth so far, -1 for none; false stops.
using FitSearchWatch = std::function<bool(std::int64_t nodes, std::int64_t worth)>;

class FitSearch {
  public:
    explicit FitSearch(const FitPlace& place);

    /// The best choice that holds the must-haves, and `also` if it is an item.
    FitFound best(std::int64_t nodes, const FitSearchWatch& watch, int also = -1);
    /// A choice of the must-haves and what they need, alone.
    FitFound musts();

  private:
    enum class State : std::int8_t { free, in, out };
    struct Step {
        std::int64_t cost;
        std::int64_t worth;
        int item;
    };

    void prepare_groups();
    void prepare_needs();
    FitFound run(std::int64_t nodes, const FitSearchWatch& watch);
    [[nodiscard]] bool begin(int also);

    bool take(int item);
    bool drop(int item);
    bool settle(int item, std::size_t need);
    void undo(std::size_t mark);

    void explore(std::int64_t ceiling);
    enum class Settled { nothing, something, dead };
    [[nodiscard]] Settled settle_by_bound();
    [[nodiscard]] Settled settle_group(const std::vector<int>& group, Int128 whole);
    [[nodiscard]] Int128 gain(int index) const;
    bool stop_here();
    void consider();
    [[nodiscard]] bool stands(const std::vector<int>& taken);
    [[nodiscard]] bool within_limits(const Selection& home);
    void tidy();

    [[nodiscard]] std::int64_t least(const FitPrice& price) const;
    [[nodiscard]] std::int64_t most(const FitPrice& price) const;
    [[nodiscard]] std::int64_t bound();
    void gather_group(const std::vector<int>& group);
    void add_hull(std::int64_t base);
    [[nodiscard]] std::int64_t fill();
    [[nodiscard]] std::int64_t least_added(int index) const;
    [[nodiscard]] std::int64_t most_added(int index) const;
    [[nodiscard]] std::int64_t cost_in_bound(int index) const;
    static bool denser(const Step& a, const Step& b);
    [[nodiscard]] int branch_on() const;
    [[nodiscard]] int open_need() const;

    [[nodiscard]] const FitItem& item(int index) const {
        return place_.items->items[static_cast<std::size_t>(index)];
    }
    [[nodiscard]] State& state(int index) { return states_[static_cast<std::size_t>(index)]; }
    [[nodiscard]] State state(int index) const { return states_[static_cast<std::size_t>(index)]; }

    FitPlace place_;
    std::optional<FitReach> reach_;
    int count_ = 0;
    std::vector<std::vector<int>> groups_; ///< of items of which at most one can be in
    struct Use {
        int item;
        std::size_t need;
    };
    std::vector<std::vector<Use>> used_by_;     ///< who needs an item
    std::vector<std::vector<int>> only_met_by_; ///< helpers that an item cannot do without
    std::vector<std::int64_t> sharers_;         ///< how many cannot do without a helper
    std::vector<int> packages_;
    std::int64_t unit_ = 1; ///< every worth is a multiple of it

    std::vector<State> states_;
    std::vector<int> trail_;
    std::int64_t worth_in_ = 0;

    // Of the bound in hand.
    std::vector<Step> steps_;
    std::vector<Step> points_;
    std::int64_t sure_worth_ = 0;
    std::int64_t room_ = 0;
    int densest_ = -1;
    Step edge_{0, 0, -1};             ///< that no longer fits whole; item -1: all fit
    std::vector<std::int64_t> costs_; ///< of the free items, by item

    FitFound found_;
    std::int64_t open_ = -1; ///< the most of what was not looked into
    std::int64_t node_limit_ = 0;
    bool stopped_ = false;
    bool sparing_ = false; ///< the first choice found will do, of as little as possible
    const FitSearchWatch* watch_ = nullptr;
    std::unordered_map<std::int64_t, bool> verdicts_; ///< by the total of options, in cents
};

} // namespace quoin
