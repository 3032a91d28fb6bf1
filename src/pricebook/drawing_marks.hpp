// Where the parts of a drawing stand in its file, for checks that come after it was read.
#pragma once

#include <map>
#include <string>
#include <vector>

#include <quoin/pricebook/drawn.hpp>
#include <quoin/text/spot.hpp>

namespace quoin {

/// One for each part of a floor or of a change, in their order.
struct PartMarks {
    std::vector<Mark> rooms; ///< their outlines
    std::vector<Mark> openings;
    std::vector<Mark> stairs; ///< their outlines
    std::vector<Mark> stairs_to;
};

struct DrawingMarks {
    Mark floors; ///< the list of them
    std::vector<PartMarks> of_floors;
    std::vector<PartMarks> of_changes;
    std::vector<Mark> changes;
    std::map<std::string, Mark> measures; ///< where a floor's room first names them
};

/// What a drawing that was read is held to.
struct DrawingRead {
    const PlanDrawing& drawing;
    const DrawingMarks& marks;
    const PriceBook& book;
    Index<Plan> plan;
};

/// Holds a sound drawing to its plan and to itself, as drawn and after changes.
void check_drawing(const DrawingRead& read, Findings& findings);

} // namespace quoin
