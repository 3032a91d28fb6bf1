// Which of two has cost less, when.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

/// A stretch of months, by what its months are called: 0 is the closing.
struct WhenWords {
    Phrase<> throughout;
    Phrase<> at_closing;
    Phrase<int> from_on;      ///< its first month; it does not end
    Phrase<int> through;      ///< its last month; it starts at the closing
    Phrase<int> with;         ///< its one month
    Phrase<int, int> from_to; ///< its first and its last month
};

struct OrderWords {
    WhenWords payments;
    WhenWords months;
    Phrase<Text> both_same;          ///< when
    Phrase<Text, Text> costs_less;   ///< which of the two, when
    Phrase<> never_paid_back;        ///< points, as all below: a sentence
    Phrase<> nothing_more;           ///< from the closing on
    Phrase<Text> paid_back_after;    ///< so many years or months, for good
    Phrase<Text> paid_back_at_times; ///< when
};

} // namespace quoin
