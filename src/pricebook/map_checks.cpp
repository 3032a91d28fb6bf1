// Holding a map to its price book: outlines, widths, yards, and which plan fits where.
#include <algorithm>

#include "book_reader.hpp"
#include "ground.hpp"
#include "map_reader.hpp"

namespace quoin {
namespace {

/// What is drawn may differ from what is said by one in so many: 2 %.
constexpr std::int64_t one_in = 50;
/// Neighbors' corners may be this far apart: half a foot. Degrees with six decimals, as RFC 7946
/// (section 11.2) advises, are rounded to a third of one.
constexpr std::int64_t apart = 50;

Decimal in_feet(std::int64_t hundredths) {
    return Decimal::billionths(hundredths * Decimal::hundredth);
}

std::int64_t in_hundredths(const Decimal& feet) {
    return divide_rounded(feet.billionths(), Decimal::hundredth, Rounding::half_away);
}

Footprint stretched(const Footprint& footprint, std::int64_t share) {
    return {footprint.width + footprint.width * share / one_in,
            footprint.depth + footprint.depth * share / one_in};
}

class Checks {
  public:
    Checks(const MapRead& read, const PriceBook& book, const PerItem<Plan, Footprint>& footprints,
           Findings& findings)
        : read_(read), book_(book), footprints_(footprints), findings_(findings) {}

    [[nodiscard]] bool outlines() {
        const std::size_t found = findings_.problems().size();
        for (std::size_t i = 0; i < read_.lots.size(); ++i) {
            sound(read_.map.lots[i].outline, read_.lots[i]);
        }
        for (std::size_t i = 0; i < read_.land.size(); ++i) {
            sound(read_.map.land[i].outline, read_.land[i]);
        }
        return findings_.problems().size() == found;
    }

    void overlaps() {
        for (std::size_t i = 0; i < read_.lots.size(); ++i) {
            for (std::size_t j = 0; j < i; ++j) {
                const LotOutline& other = read_.map.lots[j];
                if (!overlap_by_more(read_.map.lots[i].outline, other.outline, apart)) continue;
                findings_.add(
                    problems::outlines_overlap(read_.lots[i].spot(), at(book_.lots, other.lot).id));
            }
        }
    }

    void each_drawn() {
        for (const Index<Lot> lot : indexes_of(book_.lots)) {
            const auto& drawn = read_.map.lots;
            const bool there = std::any_of(drawn.begin(), drawn.end(),
                                           [&](const auto& one) { return one.lot == lot; });
            if (there) continue;
            findings_.add(problems::lot_not_drawn(read_.whole.spot(), at(book_.lots, lot).id));
        }
    }

    void each_lot() {
        for (std::size_t i = 0; i < read_.lots.size(); ++i) {
            const LotOutline& drawn = read_.map.lots[i];
            const Lot& lot = at(book_.lots, drawn.lot);
            const LotView view(drawn);
            const auto across = view.across(drawn.front_setback);
            hold(read_.lots[i], lot, "width_ft", across ? across->length() : 0);
            plans(read_.lots[i], lot, view);
            if (const auto behind = least_behind(lot, view)) {
                hold(read_.lots[i], lot, "rear_setback_ft", *behind);
            }
        }
    }

  private:
    void sound(const Outline& outline, const Mark& mark) {
        if (!is_simple(outline)) findings_.add(problems::outline_unsound(mark.spot()));
    }

    void hold(const Mark& mark, const Lot& lot, std::string_view measure, std::int64_t drawn) {
        const Decimal* said = find_measure(lot.measures, measure);
        if (said == nullptr) return;
        const std::int64_t length = in_hundredths(*said);
        if (std::abs(drawn - length) * one_in <= length) return;
        findings_.add(problems::drawn_otherwise(mark.spot(), measure, in_feet(drawn), *said));
    }

    void plans(const Mark& mark, const Lot& lot, const LotView& view) {
        for (const Index<Plan> plan : indexes_of(book_.plans)) {
            const Footprint& house = footprints_[plan];
            if (house.width == 0) continue;
            const std::string& id = at(book_.plans, plan).id;
            const bool said = allows(lot.plans, plan);
            if (said && !view.house(stretched(house, -1))) {
                findings_.add(problems::too_small_as_drawn(mark.spot(), id, lot.id));
            }
            if (!said && view.house(stretched(house, 1))) {
                findings_.add(problems::fits_as_drawn(mark.spot(), id, lot.id));
            }
        }
    }

    /// Behind the deepest of the plans that fit; nothing where the depth of one is not known, since
    /// that may be the deepest.
    [[nodiscard]] std::optional<std::int64_t> least_behind(const Lot& lot,
                                                           const LotView& view) const {
        Footprint deepest;
        for (const Index<Plan> plan : indexes_of(book_.plans)) {
            if (!allows(lot.plans, plan)) continue;
            if (footprints_[plan].depth == 0) return std::nullopt;
            if (footprints_[plan].depth > deepest.depth) deepest = footprints_[plan];
        }
        if (deepest.depth == 0) return std::nullopt;
        auto house = view.house(deepest);
        if (!house) house = view.house({stretched(deepest, -1).width, deepest.depth});
        if (!house) return std::nullopt;
        return view.behind(*house);
    }

    const MapRead& read_;
    const PriceBook& book_;
    const PerItem<Plan, Footprint>& footprints_;
    Findings& findings_;
};

} // namespace

Footprint footprint_of(const Plan& plan, const PlanDrawing* drawing) {
    Outline corners;
    for (const Floor& floor : drawing != nullptr ? drawing->floors : std::vector<Floor>{}) {
        for (const Room& room : floor.parts.rooms) {
            corners.insert(corners.end(), room.outline.begin(), room.outline.end());
        }
    }
    const Extent drawn = corners.empty() ? Extent{} : extent_of(corners);
    const Decimal* width = find_measure(plan.measures, "house_width_ft");
    const Decimal* depth = find_measure(plan.measures, "house_depth_ft");
    return {width != nullptr ? in_hundredths(*width) : drawn.high.x - drawn.low.x,
            depth != nullptr ? in_hundredths(*depth) : drawn.high.y - drawn.low.y};
}

void check_site_map(const MapRead& read, const PriceBook& book,
                    const PerItem<Plan, Footprint>& footprints, Findings& findings) {
    Checks checks(read, book, footprints, findings);
    if (!checks.outlines()) return;
    checks.overlaps();
    checks.each_drawn();
    checks.each_lot();
}

} // namespace quoin
