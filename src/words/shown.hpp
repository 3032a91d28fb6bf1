// What the furnished model shows.
#pragma once

#include <quoin/answers/shown.hpp>

#include "words/phrase.hpp"

namespace quoin {

struct ShownWords {
    Phrase<> title;
    Phrase<Text, Text, Text> model; ///< plan, elevation, where it stands
    Phrase<Text> on_lot;            ///< where the model stands
    Phrase<> how_to_read;
    Phrase<> for_you;
    Phrase<> as_shown;
    Phrase<Text, Text> named;   ///< what is shown, its level or choice
    Phrase<Text, Text> counted; ///< what is shown, how much of it
    NamesOf<ShownStanding> standing;
    Phrase<Text> yours; ///< a level
    Phrase<> can_be_had;
    Phrase<> missing; ///< of what can be had
    Phrase<> whose_prices;
};

} // namespace quoin
