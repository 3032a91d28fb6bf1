// What the furnished model shows.
#pragma once

#include <quoin/answers/shown.hpp>

#include "words/phrase.hpp"

namespace quoin {

struct ShownWords {
    Phrase<> title;
    Phrase<Text, Text> model;              ///< plan, elevation
    Phrase<Text, Text, Text> model_on_lot; ///< plan, elevation, lot
    Phrase<> how_to_read;
    Phrase<> for_you;
    Phrase<> as_shown;
    Phrase<Text, Text> named;   ///< what is shown, its level or choice
    Phrase<Text, Text> counted; ///< what is shown, how much of it
    NamesOf<ShownStanding> standing;
    Phrase<Text> yours; ///< a level
    Phrase<> available; ///< the sum of what is shown and can be had
    Phrase<> missing;   ///< of that sum
    Phrase<> whose_prices;
};

} // namespace quoin
