// Windows, doors and other openings of a floor, cut out of its walls.
#pragma once

#include <vector>

#include "plan_pens.hpp"
#include <quoin/answers/rooms.hpp>

namespace quoin {

/// Cuts them out of the path of the walls and draws what is in them; adds what doors swing over.
void draw_openings(const std::vector<OnFloor<Opening>>& openings, const Walls& walls,
                   PathText& wall, Pens& pens, std::vector<Extent>& swings);

} // namespace quoin
