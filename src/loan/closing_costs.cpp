// Closing costs of a place.
#include <quoin/loan/closing_costs.hpp>

namespace quoin {

Money amount_of(const ClosingCost& cost, Money loan, Money price) {
    return cost.amount + percent_of(loan, cost.percent_of_loan, Rounding::half_away) +
           percent_of(price, cost.percent_of_price, Rounding::half_away) +
           per_thousand_of(loan, cost.per_thousand_of_loan, Rounding::half_away) +
           per_thousand_of(price, cost.per_thousand_of_price, Rounding::half_away);
}

Money buyers_closing_costs(const Place& place, Money loan, Money price) {
    Money sum;
    for (const ClosingCost& cost : place.closing_costs) {
        if (!cost.paid_by_seller) sum += amount_of(cost, loan, price);
    }
    return sum;
}

Money finance_charges(const Place& place, Money loan, Money price) {
    Money sum;
    for (const ClosingCost& cost : place.closing_costs) {
        if (cost.finance_charge && !cost.paid_by_seller) sum += amount_of(cost, loan, price);
    }
    return sum;
}

} // namespace quoin
