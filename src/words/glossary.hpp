// What each term of the glossary is called, and the sentence that explains it.
#pragma once

#include <quoin/words/glossary.hpp>

#include "words/phrase.hpp"

namespace quoin {

struct GlossaryWords {
    Phrase<> title;
    Phrase<> about;
    Phrase<Text> source;      ///< a regulation
    Phrase<> common_practice; ///< in place of a source
    PhrasesOf<Term, codes<Term>.size()> name;
    PhrasesOf<Term, codes<Term>.size()> meaning;
};

} // namespace quoin
