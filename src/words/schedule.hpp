// A loan month by month.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct ScheduleWords {};

} // namespace quoin
