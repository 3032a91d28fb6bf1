// Which totals of options can be within the limits: a few stretches that hold them all.
#pragma once

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
    explicit FitReach(Stretch all) : stretches_{all} {}

    [[nodiscard]] const std::vector<Stretch>& stretches() const { return stretches_; }
    /// The greatest total that is not over `top` and may be within the limits.
    [[nodiscard]] std::optional<Money> last_at_most(Money top) const;

  private:
    class Making;
    std::vector<Stretch> stretches_; ///< rising, apart
};

} // namespace quoin
