// A share of the loan that it is in: USDA's guarantee fee. total = base / (1 - percent), down to
// the dollar. Paid in cash it is a percent of the base loan.
#include "table.hpp"

namespace quoin {
namespace {

Money total(const UpfrontBasis& of, Rounding rounding) {
    return Money::cents(multiply_divide(of.base_loan.count(), 100 * Decimal::one,
                                        (hundred_percent - of.percent).value().billionths(),
                                        rounding));
}

UpfrontFee charge(const UpfrontBasis& of) {
    if (!of.financed) return percent_of_base_loan.charge(of);
    const Money exact = total(of, Rounding::down);
    const Money loan = of.whole_dollars ? to_dollars(exact, Rounding::down) : exact;
    return {percent_of(loan, of.percent, Rounding::half_away), loan - of.base_loan};
}

Money bound(const UpfrontBasis& of, Rounding rounding) {
    return of.financed ? total(of, rounding) - of.base_loan
                       : percent_of_base_loan.bound(of, rounding);
}

std::vector<FeeProof> proof(bool financed, bool whole_dollars) {
    if (!financed) return percent_of_base_loan.proof(financed, whole_dollars);
    const Formula rest = number(100) - figure("upfront_percent");
    const Formula total = down_to_cent(figure("base_loan") * number(100) / rest);
    return {{"loan", FigureCode::loan_with_fee, whole_dollars ? down_to_dollar(total) : total, 8},
            {"upfront_fee", {}, to_cent(percent_of(figure("loan"), figure("upfront_percent"))), 8},
            {"financed_fee", FigureCode::financed_fee, figure("loan") - figure("base_loan")}};
}

} // namespace

const UpfrontMethod share_of_total_loan{"share of total loan", charge, bound, proof};

} // namespace quoin
