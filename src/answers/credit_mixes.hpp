// Working out one mix of a builder's money, and finding the mixes worth working out.
#pragma once

#include <optional>
#include <vector>

#include <quoin/answers/credit.hpp>

namespace quoin {

/// What a mix is made of; what does not come off the price pays the rest, as far as it may.
struct CreditSplit {
    Money off_price;
    std::optional<Rate> rate; ///< nothing: as the scenario chooses
    std::vector<Percent> buydown;
    bool fee_in_cash = false; ///< else as the scenario has it
    std::vector<CreditUse> rest;
};

/// A mix, and the states that make its figures jump when they change.
struct WorkedMix {
    CreditMix mix;
    bool available = false; ///< the rest is for use
    LookedUpRows rows;
    int insurance_months = 0;

    [[nodiscard]] bool continues(const WorkedMix& other) const;
};

/// One scenario on one home, again and again with the money split another way.
class CreditMixer {
  public:
    CreditMixer(const ScenarioRules& rules, PricedHome home, PurchaseFacts facts, CreditAsk ask);

    [[nodiscard]] WorkedMix work_out(const CreditSplit& split);
    /// The same with its APR, which takes longer.
    [[nodiscard]] std::optional<CreditMix> told(const CreditSplit& split);
    /// The figures of a split, of any amount.
    [[nodiscard]] LoanFigures figures(const CreditSplit& split, Money amount);
    /// The scenario as it stands, without the money.
    [[nodiscard]] CreditMix today();
    [[nodiscard]] const CreditAsk& ask() const { return ask_; }

  private:
    Scenario given_;
    ScenarioRules rules_; ///< of the split worked out last
    PricedHome home_;
    Money price_;
    PurchaseFacts facts_;
    CreditAsk ask_;
};

/// What the whole of the money, and nothing of the buyer's, can do to the price for one rate and
/// buydown: amounts off the price in even steps, and on both sides of every jump between them.
[[nodiscard]] std::vector<CreditMix> mixes_of(CreditMixer& mixer, CreditSplit split,
                                              const CreditMix& today);

} // namespace quoin
