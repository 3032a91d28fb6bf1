// What a buyer's income lets a month come to under a program: its ratios, and what must be left to
// live on. Income, debts and taxes are the inquiry's.
#pragma once

#include <optional>

#include <quoin/answers/afford.hpp>

namespace quoin {

/// The loan that an income is held to: just this one, or any that is no smaller.
struct LoanHeld {
    LoanHeld(Money size, bool larger_too = false) // NOLINT: most often just a loan
        : loan(size), or_larger(larger_too) {}

    Money loan;
    bool or_larger;
};

class IncomeLimits {
  public:
    /// `automated`: by the ratio of automated underwriting, where the program has one; by none
    /// where none is published.
    IncomeLimits(const Sitting& sitting, const ScenarioRules& rules, bool automated);

    /// The same of another gross income a month; the taxes on it stay.
    [[nodiscard]] IncomeLimits with_income(Money income) const;

    /// The limits that an income would be held to, but that are not known on the day.
    [[nodiscard]] const std::vector<ListGap>& unknown() const { return gaps_.unknown; }
    /// Those whose last edition is used beyond its end.
    [[nodiscard]] const std::vector<ListGap>& continued() const { return gaps_.continued; }

    /// To go by; nullptr: there are none, or they are unknown.
    [[nodiscard]] const RatioLimits* ratios() const { return ratios_; }
    /// That is held; nothing: no ratio is, by the program or by its automated underwriting.
    [[nodiscard]] std::optional<Percent> back() const { return back_; }
    /// What automated underwriting changed; nothing: not asked for, or no ratios are known.
    [[nodiscard]] std::optional<AutomatedRatio> automated() const { return automated_; }
    [[nodiscard]] const std::optional<ResidualTest>& residual() const { return residual_; }
    /// What must be left with a loan, at least. Precondition: it is tested.
    [[nodiscard]] Money guide(LoanHeld loan) const;

    /// Tells each limit that is tested what it is, what `housing` a month takes of it, and the most
    /// that it lets it take.
    void each(Money housing, LoanHeld loan, auto see) const {
        if (income_ && back_) {
            if (ratios_->front) {
                see(AffordLimit::front_ratio, housing, ratios_->most(*income_, *ratios_->front));
            }
            see(AffordLimit::back_ratio, housing + debts_, *most_with_debts(loan));
        }
        if (is_left_tested()) {
            see(AffordLimit::residual_income, housing + residual_->upkeep,
                left_after_debts() - guide(loan));
        }
    }
    /// The most that housing and debts may come to, by the ratio or by what is left in its place;
    /// nothing: no income to hold them to, or no ratio.
    [[nodiscard]] std::optional<Money> most_with_debts(LoanHeld loan) const;
    /// Whether the back ratio may be passed by, since enough is left to live on.
    [[nodiscard]] bool passes_by(Money housing, Money loan) const;
    [[nodiscard]] bool allows(Money housing, Money loan) const;
    /// The least gross income a month for which every limit lets a month be, with the taxes on it
    /// as they are. Precondition: a ratio is held.
    [[nodiscard]] Money least_income(Money housing, Money loan) const;

  private:
    void find_residual_test(const Sitting& sitting, const ResidualIncome& guide);
    [[nodiscard]] bool is_left_tested() const { return residual_ && residual_->tested(); }
    [[nodiscard]] Money left_after_debts() const { return *income_ - *taxes_ - debts_; }
    /// The same by what is left alone; nothing: no such way.
    [[nodiscard]] std::optional<Money> most_by_residual(LoanHeld loan) const;

    std::optional<Money> income_;
    std::optional<Money> taxes_;
    Money debts_;
    std::optional<int> household_;
    std::optional<Region> region_;
    const RatioLimits* ratios_ = nullptr;
    std::optional<Percent> back_;
    std::optional<AutomatedRatio> automated_;
    std::optional<ResidualTest> residual_;
    ListGaps gaps_; ///< none without an income
};

} // namespace quoin
