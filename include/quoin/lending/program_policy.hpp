// ProgramPolicy: what a loan program says besides its tables.
//
//   program.policy.cap_by_price
//
// A program's file says it under "policy"; what the file leaves out is as usual for the program's
// kind. A kind decides nothing else.
#pragma once

#include <vector>

#include <quoin/exact/percent.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

enum class ProgramKind { conventional, fha, va, usda };
template <>
inline constexpr auto
    codes<ProgramKind> = coded<ProgramKind>({{ProgramKind::conventional, "conventional"},
                                             {ProgramKind::fha, "fha"},
                                             {ProgramKind::va, "va"},
                                             {ProgramKind::usda, "usda"}});

struct ProgramPolicy {
    /// The cap on what interested parties give is a share of the price; else of the value, the
    /// lower of price and appraisal.
    bool cap_by_price = false;
    /// The cap holds for concessions alone (see `is_concession`); else for all that they give.
    bool cap_on_concessions = false;
    /// What is left of a lender credit reduces the principal at closing; else it is lost.
    bool credit_reduces_principal = false;
    /// For homes in the rural area alone.
    bool rural_alone = false;
    /// For any buyer; else a buyer must be found eligible.
    bool any_buyer = true;
    /// Down payments to begin with: the least that the program takes, and perhaps the one from
    /// which on there is no mortgage insurance.
    std::vector<Percent> usual_down = {};

    friend bool operator==(const ProgramPolicy&, const ProgramPolicy&) = default;
};

[[nodiscard]] const ProgramPolicy& usual_policy(ProgramKind kind);

} // namespace quoin
