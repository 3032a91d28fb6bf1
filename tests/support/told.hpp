// What is told of a reason or of what would do, in English.
#pragma once

#include <string>

#include <quoin/words/reasons.hpp>

namespace quoin::test {

inline std::string told(const auto& what) {
    return words_of(what, catalogue_in(Language::english));
}

} // namespace quoin::test
