// Loans side by side on one home.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct CompareWords {
    Phrase<> title;
    Phrase<Money> contract_price;
    Phrase<> month;
    Phrase<> loan;
    Phrase<> cash;
    Phrase<> years;
    Phrase<> points;
    /// Scenario, rate without and with points, more cash, less a month, a sentence on when they
    /// pay back.
    Phrase<Text, Rate, Rate, Money, Money, Text> points_take;
    Phrase<> orders;
    Phrase<> orders_count;            ///< what the costs are made of
    Phrase<Text, Text, Text> against; ///< one scenario, the other, which costs less when
    Phrase<> catches;
    Phrase<Text, Text> catch_of; ///< program, its fine print
};

} // namespace quoin
