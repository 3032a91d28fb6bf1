// Discounting in fixed point and in exact fractions.
//
// A discount factor of k unit-periods is a product of k factors, each product cut to 124 bits after
// the point. If the factors of a and b periods are at most 2a - 1 and 2b - 1 of those bits too low,
// that of a + b periods is at most 2(a + b) - 1 too low: so every factor is less than 2k too low,
// and the worth of flows of C cents in all, the last after n periods, less than 2 n C + 1 a group.
// A fall weighs each flow with its periods, hence n times as much.
#include "net_value.hpp"

#include <algorithm>
#include <utility>

#include <quoin/exact/rounding.hpp>

namespace quoin {

using boost::multiprecision::cpp_int;

namespace {

constexpr unsigned fraction_bits = 124;
using Fixed = NetValue::Fixed;

const Fixed& one() {
    static const Fixed value = Fixed(1) << fraction_bits;
    return value;
}

Fixed product(const Fixed& a, const Fixed& b) { return (a * b) >> fraction_bits; }

Fixed power(const Fixed& base, int exponent) {
    Fixed result = one();
    Fixed square = base;
    for (int rest = exponent; rest > 0; rest /= 2) {
        if (rest % 2 == 1) result = product(result, square);
        if (rest > 1) square = product(square, square);
    }
    return result;
}

cpp_int power(std::int64_t base, int exponent) {
    return pow(cpp_int(base), static_cast<unsigned>(exponent));
}

} // namespace

/// The rate of a unit-period, r / s in lowest terms.
struct NetValue::RateFraction {
    std::int64_t r = 0;
    std::int64_t s = 1;

    RateFraction(std::int64_t units, const Ratio& periods_per_year) {
        const Int128 top = Int128{units} * periods_per_year.bottom;
        const Int128 bottom = Int128{units_per_percent} * 100 * periods_per_year.top;
        Int128 a = top;
        Int128 b = bottom;
        while (b != 0) a = std::exchange(b, a % b);
        r = narrow(top / a);
        s = narrow(bottom / a);
    }
    static std::int64_t narrow(Int128 value) {
        if (value > INT64_MAX) throw Overflow("a rate of a unit-period is too large");
        return static_cast<std::int64_t>(value);
    }
};

bool NetValue::has_less_fraction(const NetFlow& a, const NetFlow& b) {
    return Int128{a.fraction.top} * b.fraction.bottom < Int128{b.fraction.top} * a.fraction.bottom;
}

bool NetValue::is_earlier(const NetFlow& a, const NetFlow& b) {
    return a.periods != b.periods ? a.periods < b.periods : has_less_fraction(a, b);
}

NetValue::NetValue(const ActuarialProblem& problem) : periods_per_year_(problem.periods_per_year) {
    keep_net(each_flow(problem));
    make_groups();
    set_slack();
}

std::vector<NetValue::NetFlow> NetValue::each_flow(const ActuarialProblem& problem) {
    std::vector<NetFlow> timed;
    const auto add = [&](const std::vector<Flow>& flows, int sign) {
        for (const Flow& flow : flows) {
            for (int i = 0; i < flow.count; ++i) {
                timed.push_back({flow.periods + i, flow.fraction, flow.amount * sign});
            }
        }
    };
    add(problem.advances, 1);
    add(problem.payments, -1);
    std::stable_sort(timed.begin(), timed.end(), is_earlier);
    return timed;
}

void NetValue::keep_net(const std::vector<NetFlow>& timed) {
    for (auto first = timed.begin(); first != timed.end();) {
        NetFlow net = *first;
        for (++first; first != timed.end() && !is_earlier(net, *first); ++first) {
            net.amount += first->amount;
        }
        if (net.amount.is_zero()) continue;
        const bool turns =
            !flows_.empty() && (flows_.back().amount < Money{}) != (net.amount < Money{});
        if (turns) ++sign_changes_;
        flows_.push_back(net);
    }
    if (!flows_.empty()) last_period_ = flows_.back().periods;
}

void NetValue::make_groups() {
    std::stable_sort(flows_.begin(), flows_.end(), has_less_fraction);
    for (std::size_t begin = 0; begin < flows_.size();) {
        std::size_t end = begin;
        while (end < flows_.size() && !has_less_fraction(flows_[begin], flows_[end])) ++end;
        groups_.push_back({begin, end});
        begin = end;
    }
}

void NetValue::set_slack() {
    Fixed cents = 0;
    for (const NetFlow& flow : flows_) cents += Fixed(abs(cpp_int(flow.amount.count())));
    const Fixed periods = last_period_ + 2; // the fraction weighs less than one more
    slack_ = 2 * cents * periods * periods + 4 * groups_.size();
}

NetValue::Sides NetValue::group_at(const Group& group, const RateFraction& rate) const {
    const Fixed next = Fixed(rate.s) + rate.r;
    const Fixed step = one() * rate.s / next;
    Sides sums; // before the fraction: factors x amounts, and those x periods
    Fixed factor = one();
    int period = 0;
    for (std::size_t k = group.begin; k < group.end; ++k) {
        const NetFlow& flow = flows_[k];
        const int gap = flow.periods - period;
        if (gap > 0) factor = product(factor, gap == 1 ? step : power(step, gap));
        period = flow.periods;
        const bool advance = flow.amount > Money{};
        Side& side = advance ? sums.advances : sums.payments;
        const Fixed worth = factor * (advance ? flow.amount : -flow.amount).count();
        side.worth += worth;
        side.fall += worth * period;
    }
    // D = S / (1 + f i) for f = p / q, and -D' = (S of t) / ((1 + f i)(1 + i)) + f D / (1 + f i).
    const Ratio& f = flows_[group.begin].fraction;
    const Fixed whole = Fixed(rate.s) * f.bottom;
    const Fixed grown = whole + Fixed(rate.r) * f.top;
    for (Side* side : {&sums.advances, &sums.payments}) {
        side->worth = side->worth * whole / grown;
        side->fall = (side->fall * rate.s / next * whole + side->worth * rate.s * f.top) / grown;
    }
    return sums;
}

NetValue::Sides NetValue::at(std::int64_t units) const {
    const RateFraction rate(units, periods_per_year_);
    Sides sum;
    for (const Group& group : groups_) {
        const Sides part = group_at(group, rate);
        sum.advances.worth += part.advances.worth;
        sum.advances.fall += part.advances.fall;
        sum.payments.worth += part.payments.worth;
        sum.payments.fall += part.payments.fall;
    }
    return sum;
}

NetValue::Fixed NetValue::fall_over(const Fixed& speed, std::int64_t units) const {
    const RateFraction width(units, periods_per_year_);
    return speed * width.r / width.s + 1;
}

int NetValue::sign(std::int64_t units) const {
    const Sides sides = at(units);
    if (sides.advances.worth > sides.payments.worth + slack_) return 1;
    if (sides.payments.worth > sides.advances.worth + slack_) return -1;
    return exact_sign(units);
}

int NetValue::exact_sign(std::int64_t units) const {
    // With i = r / s, times (s + r)^n: a flow of t periods is c s^t (s + r)^(n - t), and a group's
    // sum is over its (1 + f i) = (s q + r p) / (s q).
    const RateFraction rate(units, periods_per_year_);
    const std::int64_t next = rate.s + rate.r;
    cpp_int top = 0;
    cpp_int bottom = 1;
    for (const Group& group : groups_) {
        cpp_int sum = 0;
        cpp_int discount = 1; // s^t
        int period = 0;
        for (std::size_t k = group.begin; k < group.end; ++k) {
            const int gap = flows_[k].periods - period;
            period = flows_[k].periods;
            discount *= power(rate.s, gap);
            sum = sum * power(next, gap) + discount * flows_[k].amount.count();
        }
        sum *= power(next, last_period_ - period);
        const Ratio& f = flows_[group.begin].fraction;
        const cpp_int whole = cpp_int(rate.s) * f.bottom;
        const cpp_int grown = whole + cpp_int(rate.r) * f.top;
        top = top * grown + sum * whole * bottom;
        bottom *= grown;
    }
    return top.sign();
}

} // namespace quoin
