// A payment, an APR, without a home, in English.
#pragma once

#include "words/payment.hpp"

namespace quoin::english {

inline constexpr PaymentWords payment = {
    .loan = "loan",
    .note_rate = "note rate",
    .term = "term",
    .payment = "payment a month",
    .payments = "payments",
    .last_payment = "last payment",
    .total_interest = "total interest",
    .total_of_payments = "total of payments",
    .principal_and_interest_alone =
        "An estimate of principal and interest alone, with no points or fees, so that the APR "
        "equals the rate: not a Loan Estimate, not an approval, not an offer to lend. Taxes, "
        "insurance, dues and mortgage insurance come on top. A licensed loan originator gives "
        "an offer.",
    .apr = "APR",
    .advanced = "advanced",
    .paid = "paid",
    .finance_charge = "finance charge",
    .actuarial_method = "By the actuarial method of 12 CFR 1026, Appendix J, from the flows as "
                        "they were given. An estimate, not a federal disclosure.",
};

} // namespace quoin::english
