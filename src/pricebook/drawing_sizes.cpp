// Areas and widths as drawn, against the figures of the plan.
#include "drawing_sizes.hpp"

#include <algorithm>
#include <set>

#include <quoin/pricebook/price_book.hpp>
#include <quoin/text/problems.hpp>

#include "geometry.hpp"

namespace quoin {
namespace {

constexpr const char* square_feet = "square_feet";
constexpr const char* width = "house_width_ft";

/// A figure of the plan, as drawn and as the price book says.
struct SizeDrawn {
    std::string name;
    Decimal drawn;
    Decimal said;

    /// By more than 2 % of what is said: 50 times the difference is more than all of it.
    [[nodiscard]] bool differs() const {
        const Int128 difference = Int128{drawn.billionths()} - said.billionths();
        return (difference < 0 ? -difference : difference) * 50 > said.billionths();
    }
};

template <class Use>
void each_room(const std::vector<FloorDrawn>& floors, const Use& use) {
    for (const FloorDrawn& floor : floors) {
        for (const Drawn<Room>& room : floor.rooms) use(*room);
    }
}

/// The ground of the rooms that count, in square feet.
template <class Counts>
Decimal ground(const std::vector<FloorDrawn>& floors, const Counts& counts) {
    constexpr std::int64_t each = Decimal::one / 20'000; // of a square hundredth, halved
    std::int64_t twice = 0;
    each_room(floors, [&](const Room& room) {
        if (counts(room)) twice += std::abs(twice_area(room.outline));
    });
    return Decimal::billionths(twice * each);
}

/// From the leftmost to the rightmost wall of any floor.
Decimal width_of(const std::vector<FloorDrawn>& floors) {
    std::optional<Extent> all;
    each_room(floors, [&](const Room& room) {
        const Extent extent = extent_of(room.outline);
        if (!all) all = extent;
        all->low.x = std::min(all->low.x, extent.low.x);
        all->high.x = std::max(all->high.x, extent.high.x);
    });
    return all ? Decimal::billionths((all->high.x - all->low.x) * Decimal::hundredth) : Decimal{};
}

std::set<std::string> measures_named(const std::vector<FloorDrawn>& floors) {
    std::set<std::string> named;
    each_room(floors,
              [&](const Room& room) { named.insert(room.measures.begin(), room.measures.end()); });
    return named;
}

bool is_part_of(const Room& room, const std::string& measure) {
    return std::count(room.measures.begin(), room.measures.end(), measure) > 0;
}

/// The square feet, the measures of these names, and the width where the plan has one.
std::vector<SizeDrawn> sizes(const Plan& plan, const std::vector<FloorDrawn>& floors,
                             const std::set<std::string>& named) {
    std::vector<SizeDrawn> sizes;
    sizes.push_back({square_feet, ground(floors, [](const Room& room) { return room.living; }),
                     plan.square_feet});
    for (const Measure& measure : plan.measures) {
        const auto counts = [&](const Room& room) { return is_part_of(room, measure.name); };
        if (measure.name == width) {
            sizes.push_back({width, width_of(floors), measure.value});
        } else if (named.count(measure.name) > 0) {
            sizes.push_back({measure.name, ground(floors, counts), measure.value});
        }
    }
    return sizes;
}

bool is_priced_by(const PriceBook& book, const std::string& measure) {
    return std::any_of(book.options.begin(), book.options.end(), [&](const Option& option) {
        return option.quantity.from == Quantity::From::plan && option.quantity.measure == measure;
    });
}

} // namespace

void check_sizes(const DrawingRead& read, const std::vector<FloorDrawn>& floors,
                 Findings& findings) {
    for (const SizeDrawn& size :
         sizes(quoin::at(read.book.plans, read.plan), floors, measures_named(floors))) {
        if (!size.differs()) continue;
        const auto named = read.marks.measures.find(size.name);
        const Mark& mark = named != read.marks.measures.end() ? named->second : read.marks.floors;
        findings.add(problems::drawn_otherwise(mark.spot(), size.name, size.drawn, size.said));
    }
}

void check_sizes_after(const DrawingRead& read, const std::vector<FloorDrawn>& floors,
                       const std::vector<Index<DrawingChange>>& changes, Index<DrawingChange> at,
                       Findings& findings) {
    const bool said = std::any_of(changes.begin(), changes.end(), [&](Index<DrawingChange> change) {
        return !quoin::at(read.drawing.changes, change).not_priced.empty();
    });
    if (said) return;
    const Plan& plan = quoin::at(read.book.plans, read.plan);
    const std::vector<FloorDrawn> first = floors_drawn(read.drawing, {});
    std::set<std::string> named = measures_named(first);
    std::set<std::string> told; // as drawn at first
    for (const SizeDrawn& size : sizes(plan, first, named)) {
        if (size.differs()) told.insert(size.name);
    }
    named.merge(measures_named(floors));
    for (const SizeDrawn& size : sizes(plan, floors, named)) {
        if (!size.differs() || told.count(size.name) > 0) continue;
        if (size.name != square_feet && !is_priced_by(read.book, size.name)) continue;
        findings.add(
            problems::change_not_priced(read.marks.changes[at.position()].spot(), size.name));
    }
}

} // namespace quoin
