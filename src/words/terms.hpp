// What is said of a loan's terms and of lengths of time.
#pragma once

#include "words/brief.hpp"

namespace quoin {

struct TermsWords {
    Phrase<int> years;  ///< "1 year", "30 years"
    Phrase<int> months; ///< "181 months"
    Phrase<> no_apr;    ///< where none was found
    Phrase<Text> points;
    Phrase<Text> points_credit; ///< points that the lender gives
    /// What stands beside a payment: program, rate, points in words, APR, term, down payment, its
    /// percent, LTV, days of the lock; then extra principal and what an adjustable rate may do.
    Phrase<Text, Rate, Text, Text, Text, Money, Text, Text, int, Text, Text> line;
    Phrase<Money> extra_principal;
    /// How long the rate is fixed, months between changes, index, its value and day, margin, caps
    /// at first, later and for life, highest rate, largest payment.
    Phrase<Text, int, Text, Text, Date, Text, Text, Text, Text, Rate, Money> adjustable;
    Phrase<Money> to_bring; ///< to the closing
    Phrase<Money> back;     ///< at the closing
    const BriefWords& brief;
};

} // namespace quoin
