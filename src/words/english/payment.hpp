// A payment, an APR, without a home, in English.
#pragma once

#include "words/payment.hpp"

namespace quoin::english {

inline constexpr PaymentWords payment = {
    .loan = "loan amount",
    .note_rate = "interest rate",
    .term = "loan term",
    .payment = "principal and interest",
    .payments = "number of payments",
    .last_payment = "last payment",
    .total_interest = "total interest",
    .total_of_payments = "total of payments",
    .principal_and_interest_alone =
        "This is an estimate of the monthly principal and interest only. It has no points or "
        "fees, so the APR equals the interest rate. It is not a Loan Estimate, an approval or an "
        "offer to "
        "lend. Taxes, insurance, dues and mortgage insurance are extra. Only a licensed loan "
        "originator can make an offer.",
    .apr = "APR",
    .advanced = "amount advanced",
    .paid = "total paid",
    .finance_charge = "finance charge",
    .actuarial_method = "Figured by the actuarial method of 12 CFR 1026, Appendix J, from the "
                        "amounts that were given. This is an estimate, not a federal disclosure.",
};

} // namespace quoin::english
