// Holding a drawing to itself: rooms apart, openings in walls, stairs that match; as drawn, after
// each change, and after every two changes of a floor that a home may have together.
#include <algorithm>
#include <set>

#include <quoin/text/problems.hpp>

#include "drawing_marks.hpp"
#include "drawing_sizes.hpp"
#include "geometry.hpp"
#include "supposed_home.hpp"

namespace quoin {
namespace {

using Changes = std::vector<Index<DrawingChange>>;

/// A home's floors, and the change that they were drawn for.
struct DrawnFor {
    std::vector<FloorDrawn> floors;
    std::optional<Index<DrawingChange>> change = {}; ///< nothing: as drawn at first
    bool beside_another = false;                     ///< each of the two is sound alone
};

/// The mark of what is drawn among those of its kind.
template <class Part>
const Mark& mark_of(const Drawn<Part>& drawn, const std::vector<Part>& parts,
                    const std::vector<Mark>& marks) {
    return marks[static_cast<std::size_t>(drawn.part - parts.data())];
}

/// Checks homes one after the other; what is wrong in several is told once.
class Checks {
  public:
    Checks(const DrawingRead& read, Findings& findings)
        : read_(&read), plain_(read.book, read.plan), findings_(&findings) {}

    void check_all();

  private:
    [[nodiscard]] std::optional<Changes> made_for(const std::vector<DrawnIf>& conditions) const;
    bool is_new(const Changes& made) { return seen_.insert(made).second; }
    void check_each_change();
    void check_two(Index<DrawingChange> first, Index<DrawingChange> second);
    void check(const DrawnFor& home);
    void check_overlaps(const DrawnFor& home, std::size_t floor);
    void check_openings(const DrawnFor& home, std::size_t floor);
    void check_stairs(const DrawnFor& home, std::size_t floor);
    const std::vector<const Room*>& rooms_of(const Opening& opening, std::size_t floor);
    [[nodiscard]] bool lies_in_wall(const Opening& opening, const DrawnFor& home,
                                    std::size_t floor);
    bool is_untold(const void* one, const void* other = nullptr) {
        return told_.insert({one, other}).second;
    }
    template <class Part>
    Spot at_fault(const DrawnFor& home, std::size_t floor, const Drawn<Part>& drawn,
                  std::vector<Part> Parts::*parts, std::vector<Mark> PartMarks::*marks) const;
    template <class Part>
    Spot spot_of(std::size_t floor, const Drawn<Part>& drawn, std::vector<Part> Parts::*parts,
                 std::vector<Mark> PartMarks::*marks) const;

    const DrawingRead* read_;
    SupposedHome plain_;
    Findings* findings_;
    std::set<Changes> seen_;
    std::set<std::pair<const void*, const void*>> told_;
    std::map<const Opening*, std::vector<const Room*>> in_wall_of_; ///< found once
    bool overlaps_ = false;                                         ///< then areas say nothing
};

template <class Part>
Spot Checks::spot_of(std::size_t floor, const Drawn<Part>& drawn, std::vector<Part> Parts::*parts,
                     std::vector<Mark> PartMarks::*marks) const {
    const PlanDrawing& drawing = read_->drawing;
    if (!drawn.by) {
        return mark_of(drawn, drawing.floors[floor].parts.*parts,
                       read_->marks.of_floors[floor].*marks)
            .spot();
    }
    return mark_of(drawn, at(drawing.changes, *drawn.by).parts.*parts,
                   read_->marks.of_changes[drawn.by->position()].*marks)
        .spot();
}

/// The part where it was drawn wrong; the change where that took away what the part needs.
template <class Part>
Spot Checks::at_fault(const DrawnFor& home, std::size_t floor, const Drawn<Part>& drawn,
                      std::vector<Part> Parts::*parts, std::vector<Mark> PartMarks::*marks) const {
    const bool blameless = home.beside_another ? drawn.by != home.change : !drawn.by;
    if (!home.change || !blameless) return spot_of(floor, drawn, parts, marks);
    return read_->marks.changes[home.change->position()].spot();
}

void Checks::check_overlaps(const DrawnFor& home, std::size_t floor) {
    const auto& rooms = home.floors[floor].rooms;
    for (std::size_t i = 0; i < rooms.size(); ++i) {
        for (std::size_t j = i + 1; j < rooms.size(); ++j) {
            if (home.change && !rooms[i].by && !rooms[j].by) continue; // as drawn at first
            if (!overlap(rooms[i]->outline, rooms[j]->outline)) continue;
            overlaps_ = true;
            const bool j_is_later = rooms[i].by <= rooms[j].by;
            const auto& later = rooms[j_is_later ? j : i];
            const auto& other = rooms[j_is_later ? i : j];
            if (!is_untold(later.part, other.part)) continue;
            findings_->add(problems::outlines_overlap(
                spot_of(floor, later, &Parts::rooms, &PartMarks::rooms), other->id));
        }
    }
}

/// The rooms, drawn at first or brought by any change, in a wall of which an opening lies.
const std::vector<const Room*>& Checks::rooms_of(const Opening& opening, std::size_t floor) {
    const auto [known, is_new] = in_wall_of_.try_emplace(&opening);
    std::vector<const Room*>& found = known->second;
    if (!is_new) return found;
    const auto add = [&](const std::vector<Room>& rooms) {
        for (const Room& room : rooms) {
            if (in_one_side(opening.from, opening.to, room.outline)) {
                found.push_back(&room);
            }
        }
    };
    add(read_->drawing.floors[floor].parts.rooms);
    for (const DrawingChange& change : read_->drawing.changes) {
        if (change.floor == floor) add(change.parts.rooms);
    }
    return found;
}

bool Checks::lies_in_wall(const Opening& opening, const DrawnFor& home, std::size_t floor) {
    const auto& rooms = rooms_of(opening, floor);
    return std::any_of(home.floors[floor].rooms.begin(), home.floors[floor].rooms.end(),
                       [&](const Drawn<Room>& room) {
                           return std::find(rooms.begin(), rooms.end(), room.part) != rooms.end();
                       });
}

void Checks::check_openings(const DrawnFor& home, std::size_t floor) {
    for (const Drawn<Opening>& opening : home.floors[floor].openings) {
        const bool open = opening->from != opening->to;
        if (open && lies_in_wall(*opening, home, floor)) continue;
        if (!is_untold(opening.part)) continue;
        findings_->add(problems::not_in_wall(
            at_fault(home, floor, opening, &Parts::openings, &PartMarks::openings)));
    }
}

bool leads_back(const FloorDrawn& there, const std::string& here, const Stairs& stairs) {
    return std::any_of(there.stairs.begin(), there.stairs.end(), [&](const Drawn<Stairs>& other) {
        return other->to == here && plainest(other->outline) == plainest(stairs.outline);
    });
}

void Checks::check_stairs(const DrawnFor& home, std::size_t floor) {
    const std::string& here = home.floors[floor].floor->id;
    for (const Drawn<Stairs>& stairs : home.floors[floor].stairs) {
        const bool matched =
            std::any_of(home.floors.begin(), home.floors.end(), [&](const FloorDrawn& there) {
                return there.floor->id == stairs->to && stairs->to != here &&
                       leads_back(there, here, *stairs);
            });
        if (matched || !is_untold(stairs.part)) continue;
        findings_->add(problems::stairs_unmatched(
            at_fault(home, floor, stairs, &Parts::stairs, &PartMarks::stairs), stairs->to));
    }
}

void Checks::check(const DrawnFor& home) {
    for (std::size_t floor = 0; floor < home.floors.size(); ++floor) {
        check_overlaps(home, floor);
        check_openings(home, floor);
        check_stairs(home, floor);
    }
}

/// The changes that are drawn for a home of which this is known; nothing where there is none.
std::optional<Changes> Checks::made_for(const std::vector<DrawnIf>& conditions) const {
    SupposedHome home = plain_;
    if (!home.suppose(conditions)) return std::nullopt;
    return changes_made(read_->drawing, [&](const DrawnIf& one) { return home.has(one); });
}

bool holds(const std::optional<Changes>& made, Index<DrawingChange> change) {
    return made && std::binary_search(made->begin(), made->end(), change);
}

/// Homes with fewer changes first: what is wrong is told of the change that brings it.
void Checks::check_each_change() {
    std::vector<std::pair<Index<DrawingChange>, Changes>> homes;
    for (const Index<DrawingChange> index : indexes_of(read_->drawing.changes)) {
        auto made = made_for(at(read_->drawing.changes, index).when);
        if (holds(made, index)) homes.emplace_back(index, std::move(*made));
    }
    std::stable_sort(homes.begin(), homes.end(), [](const auto& one, const auto& other) {
        return one.second.size() < other.second.size();
    });
    for (const auto& [index, made] : homes) {
        if (!is_new(made)) continue;
        const DrawnFor home{floors_drawn(read_->drawing, made), index};
        check(home);
        if (!overlaps_) check_sizes_after(*read_, home.floors, made, index, *findings_);
    }
}

void Checks::check_two(Index<DrawingChange> first, Index<DrawingChange> second) {
    const DrawingChange& one = at(read_->drawing.changes, first);
    const DrawingChange& other = at(read_->drawing.changes, second);
    if (one.floor != other.floor) return;
    std::vector<DrawnIf> both = one.when;
    both.insert(both.end(), other.when.begin(), other.when.end());
    const auto made = made_for(both);
    if (!holds(made, first) || !holds(made, second) || !is_new(*made)) return;
    check({floors_drawn(read_->drawing, *made), second, true});
}

void Checks::check_all() {
    seen_.insert(Changes{});
    const DrawnFor first{floors_drawn(read_->drawing, {})};
    check(first);
    if (!overlaps_) check_sizes(*read_, first.floors, *findings_);
    check_each_change();
    for (const Index<DrawingChange> second : indexes_of(read_->drawing.changes)) {
        for (const Index<DrawingChange> earlier : indexes_of(read_->drawing.changes)) {
            if (earlier < second && !findings_->full()) check_two(earlier, second);
        }
    }
}

} // namespace

void check_drawing(const DrawingRead& read, Findings& findings) {
    Checks(read, findings).check_all();
}

} // namespace quoin
