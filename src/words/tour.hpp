// The home, area by area.
#pragma once

#include <quoin/answers/tour.hpp>

#include "words/phrase.hpp"

namespace quoin {

struct TourWords {
    Phrase<> title;
    Phrase<Money> contract_price;
    Phrase<Text, Money, Text, Text> scenario; ///< its name, month, what is left to bring, terms
    Phrase<> how_to_read;
    Phrase<> price;
    Phrase<> a_month;
    Phrase<> cash;

    // One option, one form of it.
    NamesOf<TourState> state;
    Phrase<> agreed; ///< chosen, and agreed with the builder
    Phrase<Text> in_package;
    Phrase<Money> included; ///< of an allowance
    Phrase<Money> to_spend; ///< likewise
    Phrase<Text> brings;    ///< parts of a package
    Phrase<Text> before;    ///< stage of the build
    Phrase<Text> request;

    Phrase<> incentives;
    Phrase<Text, Money, Text> incentive; ///< its name, amount, where it goes
    Phrase<Money, Text> towards;
    Phrase<Text> used;
    Phrase<Text> not_used; ///< what it may go towards

    Phrase<> touch_is_difference; ///< a caution
};

} // namespace quoin
