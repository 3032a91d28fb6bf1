// A loan month by month, in English.
#pragma once

#include "words/schedule.hpp"

namespace quoin::english {

inline constexpr ScheduleWords schedule = {};

} // namespace quoin::english
