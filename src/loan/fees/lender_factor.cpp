// A lender's factor of the base loan, level: loan x factor / 12, to the cent.
#include "table.hpp"

namespace quoin {
namespace {

Money level(Money base_loan, Percent yearly) {
    return Money::cents(multiply_divide(base_loan.count(), yearly.value().billionths(),
                                        1200 * Decimal::one, Rounding::half_away));
}

MonthlyPremium charge(const AnnualBasis& of) {
    return {{level(of.base_loan, of.yearly)}, of.months};
}

Money least(const LeastAnnualBasis& of) { return level(of.base_loan, of.yearly); }

Formula proof(const YearRows& /*rows*/) {
    return to_cent(percent_of(figure("base_loan"), figure("annual_percent")) / number(12));
}

} // namespace

const AnnualMethod lender_factor{.name = "lender factor",
                                 .is_lenders = true,
                                 .rounding = 17,
                                 .charge = charge,
                                 .least = least,
                                 .proof = proof};

} // namespace quoin
