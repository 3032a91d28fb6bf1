// A payment, an APR, without a home.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct PaymentWords {
    Phrase<> loan;
    Phrase<> note_rate;
    Phrase<> term;
    Phrase<> payment;
    Phrase<> payments; ///< how many
    Phrase<> last_payment;
    Phrase<> total_interest;
    Phrase<> total_of_payments;
    Phrase<> principal_and_interest_alone;
    // An APR of flows as they are given.
    Phrase<> apr;
    Phrase<> advanced;
    Phrase<> paid;
    Phrase<> finance_charge;
    Phrase<> actuarial_method;
};

} // namespace quoin
