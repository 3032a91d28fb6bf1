// "What APR does this come to?" A plain problem of advances and payments, so that any published
// example can be put to it.
#pragma once

#include <quoin/loan/actuarial.hpp>

namespace quoin {

struct Document;
class Findings;

struct AprAnswer {
    ActuarialProblem problem;
    Decimal apr; ///< percent, cut to a hundred-millionth
    Money advanced;
    Money paid;
    Money finance_charge; ///< paid less advanced
};

/// Reads and solves a problem; what is wrong with it, no rate and several rates are findings.
[[nodiscard]] AprAnswer read_and_solve_apr(const Document& document, Findings& findings);

} // namespace quoin
