// What each option adds.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct AddsWords {};

} // namespace quoin
