// Which totals of options can be within the limits: a few stretches that hold them all.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include <quoin/answers/fit.hpp>

namespace quoin {

/// Totals outside the stretches are proven to break a limit, or to be refused; of those inside,
/// some may be.
class FitReach {
  public:
    struct Stretch {
        Money first;
        Money last;
    };

    /// Every total from `least` to `most`; one scenario's rules; the selection says which home.
    FitReach(const Sitting& sitting, const ScenarioRules& rules, const Selection& selection,
             const FitLimits& limits, Stretch all);
    /// No limits at all.
    explicit FitReach(Stretch all);
    ~FitReach();
    FitReach(const FitReach&) = delete;
    FitReach& operator=(const FitReach&) = delete;

    /// Takes off the upper ends what is proven to have no lower month, nor the same and less cash.
    void keep_cheaper(const FitLimits& than);
    /// Takes that back.
    void keep_all();

    [[nodiscard]] const std::vector<Stretch>& stretches() const { return stretches_; }
    /// The greatest total that is not over `top` and may be within the limits.
    [[nodiscard]] std::optional<Money> last_at_most(Money top) const;

  private:
    class Making;
    std::unique_ptr<Making> making_; ///< nothing where there are no limits
    std::vector<Stretch> stretches_; ///< rising, apart
    std::vector<Stretch> all_;       ///< before any was taken off
};

} // namespace quoin
