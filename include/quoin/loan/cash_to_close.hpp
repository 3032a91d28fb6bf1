// The cash of a purchase by its parts.
#pragma once

#include <quoin/exact/money.hpp>

namespace quoin {

/// What has to be brought, and what has been brought already.
///
/// A lender credit for a higher rate pays closing costs and prepaids, never the down payment
/// (Fannie Mae SEL-2018-03; HUD Reference Guide 2-06, premium pricing). What is left of it reduces
/// the principal at closing under FHA (there: it must be applied to the principal balance), on the
/// note and the payment as they are; elsewhere it is lost.
struct CashToClose {
    Money down_payment;
    Money upfront_fee;         ///< the part that is not financed, or a single premium
    Money points;              ///< negative: a lender credit, as far as it is not lost
    Money principal_reduction; ///< at closing, out of the lender credit
    Money closing_costs;       ///< the buyer's
    Money prepaid_interest;
    Money prepaid_bills; ///< insurance premiums, and tax due before the first payment
    Money escrow;        ///< initial escrow deposit
    Money buydown;       ///< subsidy of a temporary buydown
    Money credits;       ///< used
    Money deposits;      ///< earnest money and option deposits, paid before closing

    /// All the cash the purchase takes.
    [[nodiscard]] Money needed() const {
        return down_payment + upfront_fee + points + principal_reduction + closing_costs +
               prepaid_interest + prepaid_bills + escrow + buydown - credits;
    }
    /// What a lender credit may pay.
    [[nodiscard]] Money open_to_lender_credit() const {
        return closing_costs + prepaid_interest + prepaid_bills + escrow;
    }
    /// What is left to bring to the closing.
    [[nodiscard]] Money to_close() const { return needed() - deposits; }
};

} // namespace quoin
