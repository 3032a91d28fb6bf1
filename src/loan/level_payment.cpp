// The level payment: the fast path where it is certain, the exact integers everywhere else.
#include <quoin/loan/level_payment.hpp>

namespace quoin {

Money level_payment(Money loan, Rate rate, Months term) {
    if (const auto payment = level_payment_fast(loan, rate, term)) return *payment;
    return level_payment_exact(loan, rate, term);
}

} // namespace quoin
