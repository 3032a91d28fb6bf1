// Making the changes that a home's options bring to its drawing.
#include <quoin/pricebook/drawn.hpp>

#include <algorithm>
#include <string>

namespace quoin {
namespace {

template <class Part>
std::vector<Drawn<Part>> as_drawn(const std::vector<Part>& parts) {
    std::vector<Drawn<Part>> drawn;
    for (const Part& part : parts) drawn.push_back({&part});
    return drawn;
}

template <class Part>
void take_out(std::vector<Drawn<Part>>& drawn, const std::vector<std::string>& removed) {
    std::erase_if(drawn, [&](const Drawn<Part>& one) {
        return !one->id.empty() && std::count(removed.begin(), removed.end(), one->id) > 0;
    });
}

template <class Part>
void bring(std::vector<Drawn<Part>>& drawn, const std::vector<Part>& brought,
           Index<DrawingChange> by) {
    for (const Part& part : brought) {
        const auto same = std::find_if(drawn.begin(), drawn.end(), [&](const Drawn<Part>& one) {
            return !part.id.empty() && one->id == part.id;
        });
        if (same == drawn.end()) {
            drawn.push_back({&part, by});
        } else {
            *same = {&part, by};
        }
    }
}

void make(FloorDrawn& floor, const DrawingChange& change, Index<DrawingChange> by) {
    take_out(floor.rooms, change.removes);
    take_out(floor.openings, change.removes);
    take_out(floor.stairs, change.removes);
    take_out(floor.symbols, change.removes);
    bring(floor.rooms, change.parts.rooms, by);
    bring(floor.openings, change.parts.openings, by);
    bring(floor.stairs, change.parts.stairs, by);
    bring(floor.symbols, change.parts.symbols, by);
}

} // namespace

std::vector<Index<DrawingChange>> changes_made(const PlanDrawing& drawing,
                                               const std::function<bool(const DrawnIf&)>& has) {
    std::vector<Index<DrawingChange>> made;
    for (const Index<DrawingChange> index : indexes_of(drawing.changes)) {
        const DrawingChange& change = at(drawing.changes, index);
        if (std::all_of(change.when.begin(), change.when.end(), has) &&
            std::none_of(change.unless.begin(), change.unless.end(), has)) {
            made.push_back(index);
        }
    }
    return made;
}

std::vector<FloorDrawn> floors_drawn(const PlanDrawing& drawing,
                                     const std::vector<Index<DrawingChange>>& changes) {
    std::vector<FloorDrawn> floors;
    for (const Floor& floor : drawing.floors) {
        const Parts& parts = floor.parts;
        floors.push_back({&floor, as_drawn(parts.rooms), as_drawn(parts.openings),
                          as_drawn(parts.stairs), as_drawn(parts.symbols)});
    }
    for (const Index<DrawingChange> index : changes) {
        const DrawingChange& change = at(drawing.changes, index);
        make(at(floors, Index<FloorDrawn>(change.floor)), change, index);
    }
    return floors;
}

} // namespace quoin
