// ScenarioRules: everything that governs one scenario on its dates, looked up once.
//
// Holds the scenario itself, and pointers into the lending data, which must outlive it.
#pragma once

#include <vector>

#include <quoin/lending/editions.hpp>
#include <quoin/lending/place.hpp>
#include <quoin/lending/program.hpp>
#include <quoin/lending/rate_sheet.hpp>
#include <quoin/loan/adjustable.hpp>
#include <quoin/loan/closing_costs.hpp>
#include <quoin/loan/scenario.hpp>
#include <quoin/loan/watch.hpp>

namespace quoin {

/// The last value of a dimension before some table's row changes.
struct Edge {
    Dimension dimension = Dimension::ltv;
    std::int64_t last = 0; ///< billionths
};

struct ScenarioRules {
    Scenario scenario; ///< changed by `choose` and `with` alone
    const LoanProgram* program = nullptr;
    const Place* place = nullptr;
    ProgramEditions editions;
    const Ladder* ladder = nullptr;            ///< nullptr: the sheet has no such rate
    std::optional<AdjustableTerms> adjustable; ///< nothing: fixed, or no margin is quoted
    std::vector<const BandTable*> adjustments;
    Edition<BandTable> mi_factors;
    Edition<BandTable> single_premium;
    ListGaps gaps;              ///< of all these lists and the place's
    ClosingCosts closing_costs; ///< the lender's and the place's
    Date closing;
    Date first_payment;
    int per_diem_year = 360;
    const Watch* watch = nullptr; ///< asked before each figures are worked out
    std::vector<Edge> edges; ///< where a table read for the loan changes rows, as the loan grows

    [[nodiscard]] const Edition<BandTable>& edition(Rule which) const {
        return editions.rules[static_cast<std::size_t>(which)];
    }
    /// The table to go by; nullptr: there is no such rule, or `gaps` says that it is not known.
    [[nodiscard]] const BandTable* rule(Rule which) const { return edition(which).rule(); }
    /// Whether a lender's mortgage insurance, and no fee of the program, secures the loan.
    [[nodiscard]] bool lender_insures() const;
    /// Where the yearly percent of a loan is read that is insured or charged year by year.
    [[nodiscard]] const Edition<BandTable>& yearly_percent() const {
        return lender_insures() ? mi_factors : edition(Rule::annual_fee);
    }
    /// Whether a loan of this scenario is read against a list, whatever its size. Insurance depends
    /// on LTV, and ratios on the question: they are left out.
    [[nodiscard]] bool always_reads(RuleList list) const;
    /// Goes on with the scenario changed, but for its program, term and lock, by which all this was
    /// looked up.
    void choose(Scenario changed);
    /// The same for the scenario changed so.
    [[nodiscard]] ScenarioRules with(Scenario changed) const;
};

[[nodiscard]] ScenarioRules rules_for(const Scenario& scenario, const LoanProgram& program,
                                      const RateSheet& sheet, const Place& place, Date as_of,
                                      Date closing);

} // namespace quoin
