// A percent of the base loan: FHA's upfront premium, VA's funding fee. Loans are whole dollars, so
// the cents of a financed fee are paid in cash.
#include "table.hpp"

namespace quoin {
namespace {

UpfrontFee charge(const UpfrontBasis& of) {
    UpfrontFee upfront;
    upfront.fee = percent_of(of.base_loan, of.percent, Rounding::half_away);
    if (of.financed) {
        upfront.financed = of.whole_dollars ? to_dollars(upfront.fee, Rounding::down) : upfront.fee;
    }
    return upfront;
}

Money bound(const UpfrontBasis& of, Rounding rounding) {
    return percent_of(of.base_loan, of.percent, rounding);
}

std::vector<FeeProof> proof(bool financed, bool whole_dollars) {
    const Formula fee = to_cent(percent_of(figure("base_loan"), figure("upfront_percent")));
    const Formula whole = figure("upfront_fee");
    const Formula in_loan = whole_dollars ? down_to_dollar(whole) : whole;
    return {{"upfront_fee", {}, fee, 7},
            {"financed_fee", FigureCode::financed_fee, financed ? in_loan : number(0), 7},
            {"loan", FigureCode::loan, figure("base_loan") + figure("financed_fee")}};
}

} // namespace

const UpfrontMethod percent_of_base_loan{"percent of base loan", charge, bound, proof};

} // namespace quoin
