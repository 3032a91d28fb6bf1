// Holding the areas and the width of a drawing to the figures of its plan.
#pragma once

#include "drawing_marks.hpp"

namespace quoin {

/// As drawn at first: what differs from the plan's by more than 2 %.
void check_sizes(const DrawingRead& read, const std::vector<FloorDrawn>& floors,
                 Findings& findings);

/// After changes, told at one of them: figures that options are priced by, or the square feet, that
/// differ by more than 2 % where no change says why that is not priced.
void check_sizes_after(const DrawingRead& read, const std::vector<FloorDrawn>& floors,
                       const std::vector<Index<DrawingChange>>& changes, Index<DrawingChange> at,
                       Findings& findings);

} // namespace quoin
