// Who does what only the whole program can.
#include "whole.hpp"

namespace quoin::apps {

const Whole& whole_of(const Typed& typed) {
    if (typed.whole == nullptr) throw LeftToWhole();
    return *typed.whole;
}

} // namespace quoin::apps
