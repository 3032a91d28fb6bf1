// The programs and rates that can be used.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct ProgramsWords {
    Phrase<> title;
    Phrase<Text, int, Text> ladder; ///< term, days of the lock, its rungs
    Phrase<Rate, Text> rung;        ///< rate, points
    Phrase<Text> not_available;     ///< what the data do not tell
    Phrase<> points_before_adjustments;
};

} // namespace quoin
