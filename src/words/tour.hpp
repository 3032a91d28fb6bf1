// The home, area by area.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct TourWords {};

} // namespace quoin
