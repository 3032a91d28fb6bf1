// Cutting the loans on a range of prices into parts.
#include "loan_parts.hpp"

#include <algorithm>

#include "loan_sizing.hpp"
#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

constexpr std::int64_t the_whole = hundred_percent.value().billionths();

std::int64_t cut_to(std::int64_t billionths, std::int64_t step) { return billionths / step * step; }

bool is_share(const Edge& edge) {
    return edge.dimension == Dimension::ltv || edge.dimension == Dimension::down;
}

/// Edges in shares of the price, from the smallest loans up: their order is that at a price so high
/// that dollars tell them apart.
std::vector<Edge> edges_in_shares(const ScenarioRules& rules) {
    constexpr Money high = Money::dollars(10'000'000'000);
    struct Placed {
        std::int64_t last;
        Edge edge;
    };
    std::vector<Placed> placed;
    for (const Edge& edge : rules.edges) {
        if (!is_share(edge)) continue;
        const std::int64_t last = last_base_loan(edge, high, high);
        if (0 <= last && last < high.count() / 100) placed.push_back({last, edge});
    }
    std::sort(placed.begin(), placed.end(),
              [](const Placed& a, const Placed& b) { return a.last < b.last; });
    std::vector<Edge> edges;
    for (const Placed& each : placed) edges.push_back(each.edge);
    return edges;
}

/// The loans up to an edge have no higher LTV, and no smaller percent down.
void end_at(LoanPart& part, const Edge& edge) {
    if (edge.dimension == Dimension::ltv) {
        part.most_ltv = Decimal::billionths(cut_to(edge.last, Decimal::hundredth));
        part.least_down = Decimal::billionths(
            std::max<std::int64_t>(the_whole - part.most_ltv.billionths() - Decimal::hundredth, 0));
        return;
    }
    part.least_down =
        Decimal::billionths(cut_to(edge.last, Decimal::millionth) + Decimal::millionth);
    part.most_ltv =
        Decimal::billionths(cut_to(the_whole - part.least_down.billionths(), Decimal::hundredth));
}

/// And those past it no lower one, and no larger.
void begin_after(LoanPart& part, const Edge& edge) {
    if (edge.dimension == Dimension::ltv) {
        part.least_ltv =
            Decimal::billionths(cut_to(edge.last, Decimal::hundredth) + Decimal::hundredth);
        part.most_down = Decimal::billionths(the_whole - part.least_ltv.billionths());
        return;
    }
    part.most_down = Decimal::billionths(cut_to(edge.last, Decimal::millionth));
    part.least_ltv = Decimal::billionths(
        cut_to(the_whole - part.most_down.billionths() - Decimal::millionth, Decimal::hundredth));
}

/// Cuts a part at the edges in dollars.
void cut_at_dollars(const ScenarioRules& rules, LoanPart part, std::vector<LoanPart>& parts) {
    std::vector<std::int64_t> ends;
    for (const Edge& edge : rules.edges) {
        const Money end = Money::dollars(edge.last / Decimal::one);
        if (!is_share(edge) && part.least <= end && end < part.most) {
            ends.push_back(edge.last / Decimal::one);
        }
    }
    std::sort(ends.begin(), ends.end());
    for (const std::int64_t end : ends) {
        if (Money::dollars(end) < part.least) continue;
        LoanPart first = part;
        first.most = Money::dollars(end);
        first.most_at_all = std::min(first.most_at_all, first.most);
        parts.push_back(first);
        part.least = Money::dollars(end + 1);
        part.least_at_all = std::max(part.least_at_all, part.least);
    }
    parts.push_back(part);
}

} // namespace

namespace {

/// The promise of the parts: they hold every whole dollar from nothing to the highest price.
void check(const std::vector<LoanPart>& parts, Money most) {
    ensure(!parts.empty() && parts.front().least.is_zero(), "loans begin at nothing");
    ensure_equal(parts.back().most, most, "loans end at the highest price");
    for (std::size_t i = 0; i < parts.size(); ++i) {
        ensure(parts[i].least <= parts[i].most, "a part of the loans holds some");
        ensure(i == 0 || parts[i].least <= parts[i - 1].most + Money::dollars(1),
               "no loan lies between two parts");
    }
}

} // namespace

std::vector<LoanPart> loan_parts(const ScenarioRules& rules, Money least, Money most) {
    ensure(Money{} <= least && least <= most, "prices rise from zero");
    constexpr Money dollar = Money::dollars(1);
    std::vector<LoanPart> parts;
    LoanPart part;
    part.most_down = Decimal::billionths(the_whole);
    for (const Edge& edge : edges_in_shares(rules)) {
        const Money lowest = Money::dollars(last_base_loan(edge, least, least));
        part.most = Money::dollars(last_base_loan(edge, most, most));
        part.most_at_all = lowest;
        end_at(part, edge);
        part.left_out = std::max(least - lowest - dollar, Money{}); // a dollar for what is cut off
        if (part.least <= part.most) cut_at_dollars(rules, part, parts);
        part.least = std::max(lowest + dollar, Money{});
        part.least_at_all = std::max(part.most + dollar, Money{});
        begin_after(part, edge);
    }
    part.most = to_dollars(most, Rounding::down);
    part.most_at_all = to_dollars(least, Rounding::down);
    part.most_ltv = Decimal::billionths(the_whole);
    part.least_down = {};
    part.left_out = {};
    if (part.least <= part.most) cut_at_dollars(rules, part, parts);
    check(parts, part.most);
    return parts;
}

} // namespace quoin
