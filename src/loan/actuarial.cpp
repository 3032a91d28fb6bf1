// Solving Appendix J's equation in fixed point, with the root between two neighbours.
#include <quoin/loan/actuarial.hpp>

#include <algorithm>

#include <boost/multiprecision/cpp_int.hpp>

namespace quoin {
namespace {

using boost::multiprecision::cpp_int;

/// Discount factors carry 192 bits after the point; each product is cut by less than 2^-192, so
/// that even ten thousand periods of a billion dollars stay within a millionth of a cent.
constexpr unsigned fraction_bits = 192;
constexpr std::int64_t units_per_percent = 100'000'000;
constexpr std::int64_t most_percent = 10'000;

/// The net worth of a transaction to its creditor's customer at a rate: advances less payments.
class NetValue {
  public:
    explicit NetValue(const ActuarialProblem& problem) : problem_(problem) {}

    /// Sign of the value at an APR in units: +1 where advances are worth more than payments.
    [[nodiscard]] int sign(std::int64_t units) const {
        // i = units x bottom / (units_per_percent x 100 x top), as a fraction r / s.
        const Ratio& year = problem_.periods_per_year;
        const cpp_int r = cpp_int(units) * year.bottom;
        const cpp_int s = cpp_int(units_per_percent) * 100 * year.top;
        const cpp_int value = worth(problem_.advances, r, s) - worth(problem_.payments, r, s);
        return value.sign();
    }

  private:
    static cpp_int worth(const std::vector<Flow>& flows, const cpp_int& r, const cpp_int& s) {
        const cpp_int one = cpp_int(1) << fraction_bits;
        const cpp_int step = one * s / (s + r);
        cpp_int sum = 0;
        for (const Flow& flow : flows) {
            cpp_int factor = power(step, flow.periods);
            cpp_int factors = 0;
            for (int i = 0; i < flow.count; ++i) {
                factors += factor;
                factor = (factor * step) >> fraction_bits;
            }
            // 1 / (1 + f r / s) = s b / (s b + r t) for f = t / b.
            const cpp_int whole = s * flow.fraction.bottom;
            sum += factors * flow.amount.count() * whole / (whole + r * flow.fraction.top);
        }
        return sum;
    }
    static cpp_int power(const cpp_int& base, int exponent) {
        cpp_int result = cpp_int(1) << fraction_bits;
        cpp_int square = base;
        for (int rest = exponent; rest > 0; rest /= 2) {
            if (rest % 2 == 1) result = (result * square) >> fraction_bits;
            square = (square * square) >> fraction_bits;
        }
        return result;
    }

    const ActuarialProblem& problem_;
};

/// A flow at a time in unit-periods; payments are negative.
struct TimedFlow {
    int periods = 0;
    Ratio fraction;
    Money amount;
};

bool is_earlier(const TimedFlow& a, const TimedFlow& b) {
    if (a.periods != b.periods) return a.periods < b.periods;
    return Int128{a.fraction.top} * b.fraction.bottom < Int128{b.fraction.top} * a.fraction.bottom;
}

std::vector<TimedFlow> in_time_order(const ActuarialProblem& problem) {
    std::vector<TimedFlow> timed;
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

/// Changes of sign of the net flows in time order: with one, there is at most one positive rate.
int sign_changes(const ActuarialProblem& problem) {
    const auto timed = in_time_order(problem);
    int changes = 0;
    int last = 0;
    for (std::size_t i = 0; i < timed.size();) {
        Money net;
        const std::size_t first = i;
        for (; i < timed.size() && !is_earlier(timed[first], timed[i]); ++i) {
            net += timed[i].amount;
        }
        const int sign = net > Money{} ? 1 : net < Money{} ? -1 : 0;
        if (sign != 0 && last != 0 && sign != last) ++changes;
        if (sign != 0) last = sign;
    }
    return changes;
}

Decimal in_percent(std::int64_t units) {
    return Decimal::billionths(units * (Decimal::one / units_per_percent));
}

/// The root between two rates at which the value has different signs.
Decimal between(const NetValue& value, std::int64_t low, std::int64_t high) {
    const int at_low = value.sign(low);
    if (at_low == 0) return in_percent(low);
    while (high - low > 1) {
        const std::int64_t middle = low + (high - low) / 2;
        const int sign = value.sign(middle);
        if (sign == 0) return in_percent(middle);
        (sign == at_low ? low : high) = middle;
    }
    return in_percent(low);
}

/// Looks at every half percent for changes of sign; where the flows change sign once, one is
/// enough.
ActuarialSolution scan(const NetValue& value, bool only_one) {
    constexpr std::int64_t step = units_per_percent / 2;
    std::vector<std::int64_t> starts; // of stretches that hold a root
    int before = value.sign(0);
    if (before == 0) starts.push_back(0);
    for (std::int64_t low = 0; low < most_percent * units_per_percent; low += step) {
        const int after = value.sign(low + step);
        if (before * after < 0 || (after == 0 && before != 0)) starts.push_back(low);
        before = after;
        const bool far = low > 500 * units_per_percent; // beyond any loan, if nothing was found
        if (!starts.empty() && (only_one || far)) break;
    }
    if (starts.empty()) return {ActuarialTrouble::no_rate, {}};
    if (starts.size() > 1) return {ActuarialTrouble::several_rates, {}};
    return {ActuarialTrouble::none, between(value, starts.front(), starts.front() + step)};
}

} // namespace

Money sum_of(const std::vector<Flow>& flows) {
    Money sum;
    for (const Flow& flow : flows) sum += flow.amount * flow.count;
    return sum;
}

ActuarialSolution solve(const ActuarialProblem& problem) {
    const int changes = sign_changes(problem);
    if (changes == 0) return {ActuarialTrouble::no_rate, {}};
    return scan(NetValue(problem), changes == 1);
}

} // namespace quoin
