// Sitting: one inquiry at the desk, with everything that governs its scenarios looked up once.
//
// Holds references to the desk and the inquiry, which must outlive it.
#pragma once

#include <vector>

#include <quoin/home/priced_home.hpp>
#include <quoin/inquiry/desk.hpp>
#include <quoin/inquiry/inquiry.hpp>
#include <quoin/loan/loan_figures.hpp>
#include <quoin/loan/scenario_rules.hpp>

namespace quoin {

class Sitting {
  public:
    /// Precondition: the inquiry was read against this desk without findings. Long work on it ends
    /// with Stopped where the watch, which must outlive it too, says so.
    Sitting(const Desk& desk, const Inquiry& inquiry, const Watch* watch = nullptr);

    [[nodiscard]] const PriceBook& book() const { return desk_->book; }
    [[nodiscard]] const Lending& lending() const { return desk_->lending; }
    [[nodiscard]] const Drawings& drawings() const { return desk_->drawings; }
    [[nodiscard]] const Inquiry& inquiry() const { return *inquiry_; }
    [[nodiscard]] const RateSheet& sheet() const { return *sheet_; }
    [[nodiscard]] const Place& place() const { return *place_; }
    [[nodiscard]] const std::vector<ScenarioRules>& rules() const { return rules_; }
    /// Of one scenario. Precondition: the sitting has it.
    [[nodiscard]] const ScenarioRules& rules(std::size_t scenario) const;

    /// The figures of a home under every scenario, in their order.
    [[nodiscard]] std::vector<LoanFigures> figures(const PricedHome& home) const;

    /// The same home with one of its scenarios alone.
    [[nodiscard]] Sitting only(std::size_t scenario) const;

  private:
    const Desk* desk_;
    const Inquiry* inquiry_;
    const RateSheet* sheet_;
    const Place* place_;
    std::vector<ScenarioRules> rules_;
};

} // namespace quoin
