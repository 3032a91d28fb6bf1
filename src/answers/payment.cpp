// Answering a payment.
#include <quoin/answers/payment.hpp>

namespace quoin {

PaymentAnswer payment(const LoanTerms& terms) {
    const Schedule schedule = amortize(terms);
    return {terms,
            schedule.payment(),
            schedule.months(),
            schedule.last_payment(),
            schedule.total_interest(),
            schedule.total_paid()};
}

} // namespace quoin
