// Holding a month to an income.
#include "income_limits.hpp"

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {

IncomeLimits::IncomeLimits(const Sitting& sitting, const ScenarioRules& rules, bool automated)
    : income_(sitting.inquiry().monthly_income), taxes_(sitting.inquiry().monthly_taxes),
      debts_(sitting.inquiry().monthly_debts.value_or(Money{})),
      household_(sitting.inquiry().household), region_(sitting.place().region),
      ratios_(rules.editions.ratios.rule()) {
    if (income_) {
        gaps_.note(RuleList::ratios, rules.editions.ratios);
        gaps_.note(RuleList::residual_income, rules.editions.residual_income);
    }
    const ResidualIncome* guide = rules.editions.residual_income.rule();
    if (guide != nullptr) find_residual_test(sitting, *guide);
    if (ratios_ == nullptr) return;
    if (automated) {
        automated_ = ratios_->automated;
        if (automated_ == AutomatedRatio::none_published) return;
    }
    back_ = automated && ratios_->back_automated ? ratios_->back_automated : ratios_->back;
}

void IncomeLimits::find_residual_test(const Sitting& sitting, const ResidualIncome& guide) {
    const Inquiry& inquiry = sitting.inquiry();
    ResidualTest test;
    test.guide = guide;
    test.has_income = income_.has_value();
    test.has_household = household_.has_value();
    test.has_taxes = taxes_.has_value();
    test.has_region = region_.has_value();
    test.square_feet = at(sitting.book().plans, inquiry.selection.plan).square_feet;
    test.upkeep = times(guide.upkeep_per_square_foot, test.square_feet, Rounding::half_away);
    residual_ = std::move(test);
}

IncomeLimits IncomeLimits::with_income(Money income) const {
    IncomeLimits moved = *this;
    moved.income_ = income;
    return moved;
}

Money IncomeLimits::guide(LoanHeld loan) const {
    ensure(is_left_tested(), "a guide is asked for where what is left is tested");
    return loan.or_larger ? residual_->guide.least_needed(*region_, *household_, loan.loan)
                          : residual_->guide.needed(*region_, *household_, loan.loan);
}

std::optional<Money> IncomeLimits::most_by_residual(LoanHeld loan) const {
    if (!ratios_->residual_instead || !is_left_tested()) return std::nullopt;
    const Money raised = percent_of(guide(loan), *ratios_->residual_instead, Rounding::up);
    return *income_ - *taxes_ - residual_->upkeep - raised;
}

std::optional<Money> IncomeLimits::most_with_debts(LoanHeld loan) const {
    if (!income_ || !back_) return std::nullopt;
    const Money by_ratio = ratios_->most(*income_, *back_);
    return std::max(by_ratio, most_by_residual(loan).value_or(by_ratio));
}

bool IncomeLimits::passes_by(Money housing, Money loan) const {
    if (!income_ || !back_) return false;
    const Money both = housing + debts_;
    const auto instead = most_by_residual(loan);
    return instead && both <= *instead && both > ratios_->most(*income_, *back_);
}

bool IncomeLimits::allows(Money housing, Money loan) const {
    bool within = true;
    each(housing, loan,
         [&](AffordLimit /*limit*/, Money needed, Money most) { within &= needed <= most; });
    return within;
}

Money IncomeLimits::least_income(Money housing, Money loan) const {
    ensure(ratios_ != nullptr && back_, "an income is held to a ratio");
    const Money both = housing + debts_;
    Money least = ratios_->least_income(both, *back_);
    if (const auto instead = most_by_residual(loan)) {
        least = std::min(least, *income_ + both - *instead);
    }
    if (ratios_->front) least = std::max(least, ratios_->least_income(housing, *ratios_->front));
    if (is_left_tested()) {
        least = std::max(least, *taxes_ + both + residual_->upkeep + guide(loan));
    }
    return least;
}

} // namespace quoin
