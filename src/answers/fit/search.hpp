// The search for the choice of the greatest worth, by branch and bound.
#pragma once

#include <cstdint>
#include <unordered_map>
#include <vector>

#include "bound.hpp"
#include "items.hpp"
#include "reach.hpp"

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
    FitLimits figures;      ///< its month and cash; nothing where there are no limits
    std::int64_t most = -1; ///< that any choice could be worth; -1: proven that there is none
    bool cheapest = false;  ///< proven, of the choices of its worth
    std::int64_t nodes = 0;
    [[nodiscard]] bool proven() const { return any ? most == worth : most < 0; }
};

/// Told the best so far, at every step of the work; false stops. The choice that is then given is
/// one that stands, and `most` is proven all the same.
using FitSearchWatch = std::function<bool(const FitFound& so_far)>;

class FitSearch {
  public:
    explicit FitSearch(const FitPlace& place);

    /// The best choice that holds the must-haves, and `also` if it is an item.
    FitFound best(std::int64_t nodes, const FitSearchWatch& watch, int also = -1);
    /// After best() has proven its worth: of all choices of that worth the one of the least month
    /// and, of those, the least cash. The nodes of best() count among its own.
    FitFound cheapest(std::int64_t nodes, const FitSearchWatch& watch);
    /// Any choice that stands: the must-haves and what they need, with little else.
    FitFound any(const FitSearchWatch& watch);

  private:
    using State = FitState;
    struct Use {
        int item;
        std::size_t need;
    };

    enum class Aim {
        most,  ///< the greatest worth
        least, ///< the least month and cash of the worth that was found
        any,   ///< the first choice found will do, of as little as possible
    };

    void prepare_groups();
    void prepare_needs();
    void prepare_less();
    void run(Aim aim, std::int64_t nodes, const FitSearchWatch& watch);
    [[nodiscard]] bool begin();

    bool take(int item);
    bool drop(int item);
    bool settle(int item, std::size_t need);
    bool drop_unused(int item);
    void undo(std::size_t mark);

    void explore(std::int64_t ceiling);
    [[nodiscard]] bool narrow(std::int64_t& here, int steps);
    [[nodiscard]] std::int64_t whole_units(std::int64_t worth) const;
    bool go_on();
    bool stop_here();
    [[nodiscard]] std::int64_t wanted() const;
    [[nodiscard]] bool may_reach(const Selection& home) const;
    [[nodiscard]] bool is_enough() const { return aim_ == Aim::any && found_.any; }
    void consider();
    void consider_filled();
    void propose(std::vector<int> taken);
    void leave_unneeded(std::vector<int>& taken) const;
    [[nodiscard]] const std::optional<FitLimits>& figures_of(const Selection& home);
    [[nodiscard]] bool within_limits(const FitLimits& figures) const;

    [[nodiscard]] int branch_on() const;
    [[nodiscard]] int spare_branch() const;
    [[nodiscard]] Use open_need() const;
    [[nodiscard]] int cheapest(const Use& open) const;

    // start.cpp
    std::int64_t start();
    void fill_up(const std::vector<int>& order);
    bool take_with_needs(int item);
    [[nodiscard]] Money total_in() const;
    [[nodiscard]] std::vector<int> by_gain() const;
    void improve();

    [[nodiscard]] const FitItem& item(int index) const {
        return place_.items->items[static_cast<std::size_t>(index)];
    }
    [[nodiscard]] State& state(int index) { return states_[static_cast<std::size_t>(index)]; }
    [[nodiscard]] State state(int index) const { return states_[static_cast<std::size_t>(index)]; }

    FitPlace place_;
    std::optional<FitReach> reach_;
    std::optional<FitBound> bound_;
    int count_ = 0;
    FitGroups groups_;
    std::vector<std::vector<Use>> used_by_; ///< who needs an item
    std::vector<std::vector<int>> less_of_; ///< what would be less of an item
    std::int64_t unit_ = 1;                 ///< every worth is a multiple of it

    FitStates states_;
    std::vector<int> trail_;
    std::int64_t worth_in_ = 0;

    std::vector<FitBound::Forced> forced_;
    FitFound found_;
    std::int64_t open_ = -1; ///< the most of what was not looked into
    std::int64_t node_limit_ = 0;
    bool stopped_ = false;
    Aim aim_ = Aim::most;
    int also_ = -1;
    const FitSearchWatch* watch_ = nullptr;
    /// By the total of options, in cents; nothing where the loan cannot be had.
    std::unordered_map<std::int64_t, std::optional<FitLimits>> known_;
};

} // namespace quoin
