// Halving the totals of options until what cannot be within the limits has fallen away.
#include "reach.hpp"

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/home/priced_home.hpp>
#include <quoin/loan/least_figures.hpp>

namespace quoin {

class FitReach::Making {
  public:
    Making(const Sitting& sitting, const ScenarioRules& rules, const Selection& selection,
           const FitLimits& limits)
        : sitting_(sitting), rules_(rules), selection_(selection), limits_(limits) {
        for (std::size_t i = 0; i < selection.incentives.size(); ++i) {
            for (std::size_t k = 0; k < i; ++k) {
                shared_ = shared_ ||
                          selection.incentives[i].incentive == selection.incentives[k].incentive;
            }
        }
    }

    std::vector<Stretch> stretches(Stretch all) {
        constexpr std::int64_t cells = 256;
        const Money width = all.last - all.first;
        widest_ = std::max(Money::dollars(1), part_of(width, cells, Rounding::up));
        split(all);
        for (Stretch& one : found_) {
            if (one.last == all.last && may_fit({one.last, one.last})) continue;
            trim(one, std::max(one.first, one.last - widest_), Money::dollars(1));
        }
        return std::move(found_);
    }

    void keep_cheaper(std::vector<Stretch>& stretches, const FitLimits& than) {
        cheaper_ = than;
        for (Stretch& one : stretches) {
            for (Money before = one.last + Money::cents(1); one.last < before;) {
                before = one.last;
                trim(one, one.first, Money{});
            }
        }
        std::erase_if(stretches,
                      [&](const Stretch& one) { return one.first == one.last && !may_fit(one); });
    }

  private:
    [[nodiscard]] bool may_fit(Stretch totals) const {
        return any_least_figures(
            rules_, sitting_.inquiry().facts, range(totals), [&](const LeastFigures& least) {
                if (least.monthly > limits_.monthly || least.cash > limits_.cash) return false;
                return !cheaper_ || least.monthly < cheaper_->monthly ||
                       (least.monthly == cheaper_->monthly && least.cash < cheaper_->cash);
            });
    }

    /// Incentives taken off the price do not fall as the options grow, so the price of a total in
    /// between lies between these. One that is put to several uses may move a dollar from one to
    /// another for each dollar of options.
    [[nodiscard]] PriceRange range(Stretch totals) const {
        const PricedHome low = home_at(sitting_.book(), selection_, totals.first);
        const PricedHome high = home_at(sitting_.book(), selection_, totals.last);
        PriceRange range;
        ensure(low.incentives <= high.incentives,
               "incentives off the price do not fall as the options grow");
        ensure_equal(low.given.size(), high.given.size(), "one home is given as many as another");
        range.least = low.contract_price + low.incentives - high.incentives;
        range.most = high.contract_price + high.incentives - low.incentives;
        PricedHome most = high; // both are given by the same picks
        for (std::size_t i = 0; i < most.given.size(); ++i) {
            Money& amount = most.given[i].amount;
            amount = std::max(low.given[i].amount, amount);
            if (shared_) {
                amount += (totals.last - totals.first) *
                          static_cast<std::int64_t>(selection_.incentives.size());
            }
        }
        range.incentives = incentive_credits(most);
        range.flood_zone = low.flood_zone;
        return range;
    }

    void split(Stretch totals) {
        if (!may_fit(totals)) return;
        const Money width = totals.last - totals.first;
        if (width > widest_) {
            const Money middle = totals.first + part_of(width, 2, Rounding::down);
            split({totals.first, middle});
            split({middle + Money::cents(1), totals.last});
        } else if (!found_.empty() && found_.back().last + Money::cents(1) == totals.first) {
            found_.back().last = totals.last;
        } else {
            found_.push_back(totals);
        }
    }

    /// Takes off the end of a stretch what the part from `first` on can lose, to within `near`.
    void trim(Stretch& one, Money first, Money near) const {
        while (one.last - first > near) {
            const Money middle = first + part_of(one.last - first, 2, Rounding::down);
            if (may_fit({middle + Money::cents(1), one.last})) {
                first = middle + Money::cents(1);
            } else {
                one.last = middle;
            }
        }
    }

    const Sitting& sitting_;
    const ScenarioRules& rules_;
    const Selection& selection_;
    FitLimits limits_;
    std::optional<FitLimits> cheaper_;
    bool shared_ = false;
    Money widest_;
    std::vector<Stretch> found_;
};

FitReach::FitReach(const Sitting& sitting, const ScenarioRules& rules, const Selection& selection,
                   const FitLimits& limits, Stretch all)
    : making_(std::make_unique<Making>(sitting, rules, selection, limits)),
      stretches_(making_->stretches(all)), all_(stretches_) {
    ensure(all.first <= all.last, "totals of options rise");
    for (std::size_t i = 0; i < all_.size(); ++i) {
        ensure(all.first <= all_[i].first && all_[i].first <= all_[i].last &&
                   all_[i].last <= all.last,
               "a stretch holds totals that there may be");
        ensure(i == 0 || all_[i - 1].last < all_[i].first, "stretches rise, apart");
    }
}

FitReach::FitReach(Stretch all) : stretches_{all}, all_(stretches_) {}

FitReach::~FitReach() = default;

void FitReach::keep_cheaper(const FitLimits& than) {
    if (making_) making_->keep_cheaper(stretches_, than);
}

void FitReach::keep_all() { stretches_ = all_; }

std::optional<Money> FitReach::last_at_most(Money top) const {
    for (auto one = stretches_.rbegin(); one != stretches_.rend(); ++one) {
        if (one->first <= top) return std::min(one->last, top);
    }
    return std::nullopt;
}

} // namespace quoin
