// Solving Appendix J's equation: roots counted, then the one root enclosed between neighbours.
//
// Each side of the equation falls as the rate rises, and ever more slowly: its fall is fastest at
// the low end of a stretch of rates and slowest at the high end. A stretch is halved until that
// shows either that one side stays ahead all along it, or that its lead only grows or only shrinks,
// and then the signs at the ends decide.
#include <quoin/loan/actuarial.hpp>

#include <quoin/exact/broken.hpp>

#include "net_value.hpp"

namespace quoin {
namespace {

constexpr std::int64_t most_percent = 10'000;
/// One beyond the highest rate looked at, so that a root at that very rate is found.
constexpr std::int64_t end_of_rates = most_percent * units_per_percent + 1;

/// Stretches looked at before roots count as too close to be told apart: some hundred times what a
/// loan takes, and more than a triple root does.
constexpr int most_stretches = 5'000;

using Side = NetValue::Side;

struct Stretch {
    std::int64_t low = 0;
    std::int64_t high = 0; ///< not in it
    NetValue::Sides at_low;
    NetValue::Sides at_high;
};

/// Whether a side's lead at the low end is more than it can lose on the way to the high end.
bool stays_ahead(const NetValue& value, const Side& side, const Side& other,
                 const Side& other_at_high, std::int64_t units) {
    const Side most{other.worth + value.slack(), side.fall + value.slack()};
    if (side.worth <= most.worth) return false;
    if (most.fall <= other_at_high.fall) return true;
    return value.fall_over(most.fall - other_at_high.fall, units) < side.worth - most.worth;
}

bool holds_no_root(const NetValue& value, const Stretch& s) {
    const std::int64_t units = s.high - s.low;
    return stays_ahead(value, s.at_low.advances, s.at_low.payments, s.at_high.payments, units) ||
           stays_ahead(value, s.at_low.payments, s.at_low.advances, s.at_high.advances, units);
}

bool has_one_direction(const NetValue& value, const Stretch& s) {
    return s.at_high.advances.fall > s.at_low.payments.fall + value.slack() ||
           s.at_high.payments.fall > s.at_low.advances.fall + value.slack();
}

/// A root at `low` itself or between the ends; one at `high` is the next stretch's.
bool changes_sign(const NetValue& value, std::int64_t low, std::int64_t high) {
    const int at_low = value.sign(low);
    return at_low == 0 || at_low * value.sign(high) < 0;
}

/// The stretches that hold one root each, as far as the second; two too where roots lie too close
/// to be told apart.
std::vector<Stretch> stretches_with_a_root(const NetValue& value) {
    std::vector<Stretch> found;
    std::vector<Stretch> open = {{0, end_of_rates, value.at(0), value.at(end_of_rates)}};
    for (int looked_at = 1; !open.empty() && found.size() < 2; ++looked_at) {
        const Stretch s = open.back();
        open.pop_back();
        if (holds_no_root(value, s)) continue;
        if (has_one_direction(value, s)) {
            if (changes_sign(value, s.low, s.high)) found.push_back(s);
        } else if (s.high - s.low == 1 || looked_at == most_stretches) {
            found.insert(found.end(), 2, s);
        } else {
            const std::int64_t middle = s.low + (s.high - s.low) / 2;
            const NetValue::Sides at_middle = value.at(middle);
            open.push_back({middle, s.high, at_middle, s.at_high});
            open.push_back({s.low, middle, s.at_low, at_middle});
        }
    }
    return found;
}

/// The root between two rates at which the value has different signs, or at the lower one itself.
Decimal enclosed(const NetValue& value, std::int64_t low, std::int64_t high) {
    const int at_low = value.sign(low);
    while (high - low > 1 && at_low != 0) {
        const std::int64_t middle = low + (high - low) / 2;
        const int sign = value.sign(middle);
        if (sign == 0) high = middle + 1;
        (sign == 0 || sign == at_low ? low : high) = middle;
    }
    return Decimal::billionths(low * (Decimal::one / units_per_percent));
}

} // namespace

Money sum_of(const std::vector<Flow>& flows) {
    Money sum;
    for (const Flow& flow : flows) sum += flow.amount * flow.count;
    return sum;
}

ActuarialSolution solve(const ActuarialProblem& problem) {
    ensure(problem.periods_per_year.top > 0 && problem.periods_per_year.bottom > 0,
           "a year has unit-periods");
    for (const auto* flows : {&problem.advances, &problem.payments}) {
        for (const Flow& flow : *flows) {
            ensure(flow.amount > Money{} && flow.count >= 1, "a flow has amounts above zero");
            ensure(flow.periods >= 0 && 0 <= flow.fraction.top &&
                       flow.fraction.top < flow.fraction.bottom,
                   "a flow comes after some periods and less than one more");
        }
    }
    const NetValue value(problem);
    std::int64_t low = 0;
    std::int64_t high = end_of_rates;
    if (value.sign_changes() == 0) return {ActuarialTrouble::no_rate, {}};
    if (value.sign_changes() == 1) {
        if (!changes_sign(value, low, high)) return {ActuarialTrouble::no_rate, {}};
    } else {
        const std::vector<Stretch> found = stretches_with_a_root(value);
        if (found.empty()) return {ActuarialTrouble::no_rate, {}};
        if (found.size() > 1) return {ActuarialTrouble::several_rates, {}};
        low = found.front().low;
        high = found.front().high;
    }
    return {ActuarialTrouble::none, enclosed(value, low, high)};
}

} // namespace quoin
