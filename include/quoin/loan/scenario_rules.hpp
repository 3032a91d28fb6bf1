// ScenarioRules: everything that governs one scenario on its dates, looked up once.
//
// Holds pointers into the lending data, which must outlive it.
#pragma once

#include <array>
#include <vector>

#include <quoin/lending/place.hpp>
#include <quoin/lending/program.hpp>
#include <quoin/lending/rate_sheet.hpp>
#include <quoin/loan/adjustable.hpp>
#include <quoin/loan/closing_costs.hpp>
#include <quoin/loan/scenario.hpp>

namespace quoin {

/// The last value of a dimension before some table's row changes.
struct Edge {
    Dimension dimension = Dimension::ltv;
    std::int64_t last = 0; ///< billionths
};

struct ScenarioRules {
    const Scenario* scenario = nullptr;
    const LoanProgram* program = nullptr;
    const Place* place = nullptr;
    std::array<const BandTable*, rule_count> rules{}; ///< nullptr where a rule does not apply
    const Ladder* ladder = nullptr;                   ///< nullptr: the sheet has no such rate
    std::optional<AdjustableTerms> adjustable;        ///< nothing: fixed, or no margin is quoted
    std::vector<const BandTable*> adjustments;
    const BandTable* mi_factors = nullptr;
    const BandTable* single_premium = nullptr; ///< nullptr: the sheet has none
    ClosingCosts closing_costs;                ///< the lender's and the place's
    Date closing;
    Date first_payment;
    int per_diem_year = 360;
    std::vector<Edge> edges; ///< where a table read for the loan changes rows, as the loan grows

    [[nodiscard]] const BandTable* rule(Rule which) const {
        return rules[static_cast<std::size_t>(which)];
    }
};

[[nodiscard]] ScenarioRules rules_for(const Scenario& scenario, const LoanProgram& program,
                                      const RateSheet& sheet, const Place& place, Date as_of,
                                      Date closing);

} // namespace quoin
