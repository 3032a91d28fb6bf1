// What closing costs come to on a loan and a price. Each is rounded half away from zero to the
// cent.
#pragma once

#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/lending/closing_cost.hpp>

namespace quoin {

/// What a cost is charged on.
struct CostCase {
    Money loan;
    Money price;
    bool owner_policy = false; ///< an owner's title policy of the price is issued as well
};

[[nodiscard]] Money amount_of(const ClosingCost& cost, const CostCase& on);

/// A place's costs and a lender's, as one list of pointers; they must outlive it.
class ClosingCosts {
  public:
    ClosingCosts() = default;
    ClosingCosts(const std::vector<ClosingCost>& of_place,
                 const std::vector<ClosingCost>& of_lender);

    [[nodiscard]] const std::vector<const ClosingCost*>& all() const { return all_; }
    [[nodiscard]] CostCase on(Money loan, Money price) const {
        return {loan, price, owner_policy_};
    }

    /// The sum of those the buyer pays.
    [[nodiscard]] Money buyers(Money loan, Money price) const;
    /// The sum of those the buyer pays in the sections of loan costs (12 CFR 1026.37(f)(1)-(3)).
    [[nodiscard]] Money loan_costs(Money loan, Money price) const;
    /// The sum of those the buyer pays that are finance charges (12 CFR 1026.4).
    [[nodiscard]] Money finance_charges(Money loan, Money price) const;

  private:
    std::vector<const ClosingCost*> all_;
    bool owner_policy_ = false;
};

} // namespace quoin
