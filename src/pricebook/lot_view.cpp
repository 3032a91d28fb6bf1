// A lot as seen from its street, and where a house stands on it.
//
// The house keeps to its line, so what hinders it at a place along the front is one stretch for
// each side of the lot: that where the strip within the side's setback reaches into the depths that
// the house takes. What no stretch covers is free.
#include <algorithm>
#include <utility>

#include <quoin/pricebook/site_map.hpp>

#include "ground.hpp"

namespace quoin {
namespace {

/// Corners are rounded to a hundredth of a foot, each to its own.
constexpr std::int64_t slack = 2;
/// Of a front's length, for each hundredth of a foot.
constexpr std::int64_t finer = 10'000;

std::int64_t to_hundredths(Int128 product, std::int64_t length) {
    return static_cast<std::int64_t>(
        divide_rounded<Int128>(product * finer, length, Rounding::half_away));
}

/// The same corners counterclockwise, beginning with the left end of the front.
Outline from_front(const LotOutline& lot) {
    Outline corners = lot.outline;
    std::size_t left = lot.front;
    if (twice_area(corners) < 0) {
        left = (2 * corners.size() - 2 - lot.front) % corners.size();
        std::reverse(corners.begin(), corners.end());
    }
    std::rotate(corners.begin(), corners.begin() + static_cast<std::ptrdiff_t>(left),
                corners.end());
    return corners;
}

enum class LotLine { front, side, rear };

/// What a side of a lot is, by the way it runs counterclockwise: within 45 degrees along the front,
/// against it, or across.
LotLine line_of(const Point& from, const Point& to) {
    const std::int64_t dx = to.x - from.x;
    const std::int64_t dy = to.y - from.y;
    if (std::abs(dy) > std::abs(dx)) return LotLine::side;
    return dx > 0 ? LotLine::front : LotLine::rear;
}

/// The corners of the strip within a setback of a side.
Outline strip_of(const Point& from, const Point& to, std::int64_t setback) {
    const std::int64_t dx = to.x - from.x;
    const std::int64_t dy = to.y - from.y;
    const std::int64_t length = root_of((Int128{dx} * dx + Int128{dy} * dy) * finer * finer);
    const Point inward{to_hundredths(-Int128{dy} * setback, length),
                       to_hundredths(Int128{dx} * setback, length)};
    return {from, to, {to.x + inward.x, to.y + inward.y}, {from.x + inward.x, from.y + inward.y}};
}

/// Where the line between two points is at a depth between theirs.
std::int64_t x_at(const Point& a, const Point& b, std::int64_t y) {
    return a.x + static_cast<std::int64_t>(
                     divide_rounded<Int128>(Int128{b.x - a.x} * (y - a.y) * (b.y > a.y ? 1 : -1),
                                            std::abs(b.y - a.y), Rounding::half_away));
}

/// The depth of such a line at a place along the front.
std::int64_t across_at(const Point& a, const Point& b, std::int64_t x) {
    return x_at({a.y, a.x}, {b.y, b.x}, x);
}

/// How far a convex outline reaches along the front at depths within a band; nothing where it is
/// outside of the band.
std::optional<Interval> reach_within(const Outline& outline, const Interval& band) {
    std::vector<std::int64_t> ends;
    bool above = false;
    bool below = false;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point& a = outline[i];
        const Point& b = outline[(i + 1) % outline.size()];
        above = above || a.y > band.from;
        below = below || a.y < band.to;
        if (band.from <= a.y && a.y <= band.to) ends.push_back(a.x);
        for (const std::int64_t y : {band.from, band.to}) {
            if ((a.y < y) != (b.y < y) && a.y != y && b.y != y) ends.push_back(x_at(a, b, y));
        }
    }
    if (!above || !below || ends.empty()) return std::nullopt;
    const auto [least, most] = std::minmax_element(ends.begin(), ends.end());
    return Interval{*least, *most};
}

Outline house_at(std::int64_t left, std::int64_t front, const Footprint& footprint) {
    const std::int64_t right = left + footprint.width;
    const std::int64_t back = front + footprint.depth;
    return {{left, front}, {right, front}, {right, back}, {left, back}};
}

/// The stretches that nothing hinders, between others.
std::vector<Interval> gaps_between(std::vector<Interval> taken) {
    std::sort(taken.begin(), taken.end(),
              [](const Interval& a, const Interval& b) { return a.from < b.from; });
    std::vector<Interval> gaps;
    if (taken.empty()) return gaps;
    std::int64_t end = taken.front().to;
    for (const Interval& one : taken) {
        if (one.from >= end) gaps.push_back({end, one.from});
        end = std::max(end, one.to);
    }
    return gaps;
}

} // namespace

LotView::LotView(const LotOutline& lot)
    : outline_(from_front(lot)), front_setback_(lot.front_setback), side_setback_(lot.side_setback),
      rear_setback_(lot.rear_setback) {
    corner_ = outline_[0];
    along_ = {outline_[1].x - corner_.x, outline_[1].y - corner_.y};
    length_ = root_of((Int128{along_.x} * along_.x + Int128{along_.y} * along_.y) * finer * finer);
    for (Point& corner : outline_) {
        const std::int64_t x = corner.x - corner_.x;
        const std::int64_t y = corner.y - corner_.y;
        corner = {to_hundredths(Int128{x} * along_.x + Int128{y} * along_.y, length_),
                  to_hundredths(Int128{y} * along_.x - Int128{x} * along_.y, length_)};
    }
}

Point LotView::on_sheet(const Point& seen) const {
    return {
        corner_.x + to_hundredths(Int128{seen.x} * along_.x - Int128{seen.y} * along_.y, length_),
        corner_.y + to_hundredths(Int128{seen.x} * along_.y + Int128{seen.y} * along_.x, length_)};
}

Outline LotView::on_sheet(const Outline& seen) const {
    Outline there;
    for (const Point& corner : seen) there.push_back(on_sheet(corner));
    return there;
}

std::optional<Interval> LotView::across(std::int64_t depth) const {
    std::vector<std::int64_t> crossings;
    for (std::size_t i = 0; i < outline_.size(); ++i) {
        const Point& a = outline_[i];
        const Point& b = outline_[(i + 1) % outline_.size()];
        if ((a.y > depth) != (b.y > depth)) crossings.push_back(x_at(a, b, depth));
    }
    std::sort(crossings.begin(), crossings.end());
    std::optional<Interval> widest;
    for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) {
        const Interval one{crossings[i], crossings[i + 1]};
        if (!widest || one.length() > widest->length()) widest = one;
    }
    return widest;
}

std::optional<Outline> LotView::house(const Footprint& footprint) const {
    const Interval band{front_setback_ + slack,
                        front_setback_ + std::max(footprint.depth - slack, 2 * slack)};
    std::vector<Interval> taken; // places of the house's left end
    for (std::size_t i = 0; i < outline_.size(); ++i) {
        const Point& from = outline_[i];
        const Point& to = outline_[(i + 1) % outline_.size()];
        const LotLine line = line_of(from, to);
        const std::int64_t setback = line == LotLine::front  ? front_setback_
                                     : line == LotLine::side ? side_setback_
                                                             : rear_setback_;
        const auto hinders = reach_within(strip_of(from, to, setback), band);
        if (!hinders) continue;
        const std::int64_t first = hinders->from - footprint.width + slack;
        taken.push_back({first, std::max(first, hinders->to - slack)});
    }
    std::optional<Interval> widest;
    for (const Interval& gap : gaps_between(std::move(taken))) {
        const Point inside{gap.middle() + footprint.width / 2,
                           front_setback_ + footprint.depth / 2};
        if (lies(inside, outline_) != Lies::inside) continue;
        if (!widest || gap.length() > widest->length()) widest = gap;
    }
    if (!widest) return std::nullopt;
    return house_at(widest->middle(), front_setback_, footprint);
}

std::int64_t LotView::behind(const Outline& house) const {
    const std::int64_t back = house[2].y;
    std::optional<std::int64_t> least;
    for (std::size_t i = 0; i < outline_.size(); ++i) {
        const Point& right = outline_[i];
        const Point& left = outline_[(i + 1) % outline_.size()];
        if (line_of(right, left) != LotLine::rear) continue;
        for (const std::int64_t x : {std::max(house[0].x, left.x), std::min(house[1].x, right.x)}) {
            if (x < left.x || x > right.x || x < house[0].x || x > house[1].x) continue;
            const std::int64_t y = across_at(left, right, x);
            if (y >= back - slack && (!least || y < *least)) least = y;
        }
    }
    return least.value_or(back) - back;
}

std::optional<Outline> footprint_on(const LotOutline& lot, std::int64_t width, std::int64_t depth) {
    const LotView view(lot);
    const auto house = view.house({width, depth});
    if (!house) return std::nullopt;
    return view.on_sheet(*house);
}

} // namespace quoin
