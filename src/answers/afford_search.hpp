// The search for the highest price that fits.
#pragma once

#include <vector>

#include <quoin/answers/afford.hpp>
#include <quoin/loan/least_figures.hpp>

#include "income_limits.hpp"

namespace quoin {

/// A price under a scenario: what it takes and which limits it breaks.
struct PriceTrial {
    LoanFigures figures;
    std::vector<LimitRoom> rooms; ///< of the limits that are tested; empty where it is refused
    std::vector<AffordLimit> broken;
    bool passes_by_ratio = false; ///< the back ratio, since enough is left to live on

    [[nodiscard]] bool fits() const { return broken.empty(); }
};

class AffordSearch {
  public:
    AffordSearch(const Sitting& sitting, std::size_t scenario, const AffordFacts& facts);

    [[nodiscard]] const IncomeLimits& income() const { return income_; }
    /// Of the home that highest() looks at.
    [[nodiscard]] bool flood_zone() const { return home_.flood_zone; }
    [[nodiscard]] PriceTrial trial(Money price) const { return trial(price, home_.flood_zone); }
    [[nodiscard]] PriceTrial trial(Money price, bool flood_zone) const {
        return trial(rules_, price, flood_zone);
    }
    /// Whether the bounds leave room for a price; false only where it does not fit.
    [[nodiscard]] bool is_open(Money price) const {
        return may_fit(price.count() / 100, price.count() / 100);
    }
    /// No search looks higher.
    static constexpr Money top = Money::dollars(20'000'000);
    /// The highest price, none above `most` looked at, that breaks no limit but those ignored.
    [[nodiscard]] std::optional<Money> highest(std::vector<AffordLimit> ignored,
                                               std::optional<Money> most = {});
    /// What a price above takes.
    [[nodiscard]] AffordStep step_to(Money price) const;

  private:
    [[nodiscard]] Money least_qualifying(const LeastFigures& least) const;
    [[nodiscard]] PriceTrial trial(const ScenarioRules& rules, Money price, bool flood_zone) const;
    [[nodiscard]] std::optional<LowerRate> lower_rate_for(Money price, Rate under) const;
    [[nodiscard]] LoanFigures figures_of(const ScenarioRules& rules, const PricedHome& home) const;
    [[nodiscard]] bool may_fit(std::int64_t low, std::int64_t high) const;
    [[nodiscard]] bool within_limits(const LeastFigures& least) const;
    [[nodiscard]] bool fits(std::int64_t dollars) const;
    [[nodiscard]] std::int64_t upper_bound() const;
    [[nodiscard]] std::optional<std::int64_t> best_below(std::int64_t low, std::int64_t high) const;

    ScenarioRules rules_;
    const Inquiry& inquiry_;
    AffordFacts facts_;
    PricedHome home_;
    PurchaseFacts purchase_;
    IncomeLimits income_;
    std::vector<AffordLimit> ignored_; ///< while highest() runs
};

} // namespace quoin
