// The quick answer with no files: a loan, a rate and a term.
#pragma once

#include <quoin/exact/money.hpp>
#include <quoin/loan/schedule.hpp>

namespace quoin {

struct PaymentAnswer {
    LoanTerms terms;
    Money payment;
    int months = 0; ///< payments actually made
    Money last_payment;
    Money total_interest;
    Money total_of_payments;
};

[[nodiscard]] PaymentAnswer payment(const LoanTerms& terms);

} // namespace quoin
