// Finding the catalogue in a language.
#include <quoin/words/catalogue.hpp>

#include "languages.hpp"

namespace quoin {

const Catalogue& catalogue_in(Language language) {
    return language == Language::spanish ? spanish::catalogue : english::catalogue;
}

} // namespace quoin
