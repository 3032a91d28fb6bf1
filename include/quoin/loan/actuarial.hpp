// The annual percentage rate of any transaction, by the equation of 12 CFR 1026, Appendix J(b):
//
//   sum of advances / ((1 + e i)(1 + i)^q)  =  sum of payments / ((1 + f i)(1 + i)^t)
//
// with i the rate of a unit-period, whole unit-periods q and t compounded, fractions e and f
// simple. The APR is 100 w i for w unit-periods a year.
//
//   ActuarialProblem p;                            // Appendix J(c)(1)(ii)
//   p.advances = {{Money::dollars(6000), 0, {}, 1}};
//   p.payments = {{Money::dollars(200), 1, {19, 30}, 36}};
//   solve(p).apr  ->  11.81651...
#pragma once

#include <cstdint>
#include <vector>

#include <quoin/exact/decimal.hpp>
#include <quoin/exact/money.hpp>

namespace quoin {

struct Ratio {
    std::int64_t top = 0;
    std::int64_t bottom = 1; ///< positive
};

/// `count` equal amounts, the first at `periods` and a `fraction` of a unit-period, the others one
/// unit-period apart.
struct Flow {
    Money amount;
    int periods = 0;
    Ratio fraction; ///< 0 <= fraction < 1
    int count = 1;
};

struct ActuarialProblem {
    Ratio periods_per_year{12, 1};
    std::vector<Flow> advances;
    std::vector<Flow> payments;
};

enum class ActuarialTrouble {
    none,
    no_rate,
    several_rates, ///< or rates too close to be told apart, as where the sides only touch
};

struct ActuarialSolution {
    ActuarialTrouble trouble = ActuarialTrouble::none;
    Decimal apr; ///< percent: the root, cut to a hundred-millionth; every digit is certain
};

/// Rates from 0 to 10,000 percent are looked at, and all roots among them counted.
/// Preconditions: amounts above zero, counts of 1 and more, fractions in range.
[[nodiscard]] ActuarialSolution solve(const ActuarialProblem& problem);

[[nodiscard]] Money sum_of(const std::vector<Flow>& flows);

} // namespace quoin
