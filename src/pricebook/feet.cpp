// Reading lengths in feet, as whole hundredths.
#include "feet.hpp"

#include <quoin/text/problems.hpp>

namespace quoin {
namespace {

/// The entry of a list that is one.
Spot entry(const Spot& list, int index) {
    return {&list.value->items[static_cast<std::size_t>(index)], Path{&list.path, {}, index}};
}

} // namespace

std::optional<std::int64_t> as_feet(const Spot& spot, FeetRange range, Findings& findings) {
    const auto feet = as_decimal(spot, findings);
    if (!feet) return std::nullopt;
    if (range.least == 0 && *feet < Decimal{}) {
        findings.add(problems::figure_below_zero(spot));
        return std::nullopt;
    }
    if (*feet < Decimal::whole(range.least) || *feet > Decimal::whole(range.most)) {
        findings.add(problems::number_too_large(spot.value->place, spot.value->literal));
        return std::nullopt;
    }
    return divide_rounded(feet->billionths(), Decimal::hundredth, Rounding::half_away);
}

std::optional<Point> as_place(const Spot& spot, FeetRange range, Findings& findings) {
    const auto& numbers = spot.value->items;
    if (spot.value->kind != Value::Kind::list) {
        findings.add(problems::not_a_list(spot));
    } else if (numbers.size() < 2) {
        findings.add(problems::member_missing(spot, numbers.empty() ? "x" : "y"));
    } else if (numbers.size() > 2) {
        findings.add(problems::too_many(spot, numbers.size(), 2));
    } else {
        const auto x = as_feet(entry(spot, 0), range, findings);
        const auto y = as_feet(entry(spot, 1), range, findings);
        if (x && y) return Point{*x, *y};
    }
    return std::nullopt;
}

} // namespace quoin
