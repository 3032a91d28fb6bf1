// The first lines of every text: which home, for whom, as of when.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct HeadingWords {
    Phrase<Text, Text> community; ///< community, builder
    /// Plan, style, square feet, elevation, lot, buyer.
    Phrase<Text, Text, Text, Text, Text, Text> home;
    Phrase<Date, Text, Date, Date> dates; ///< as of, price book, its last day, closing
    Phrase<Text> prepared_by;
};

} // namespace quoin
