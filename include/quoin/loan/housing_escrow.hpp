// The escrow account of a home: its tax and insurance bills, and the account that pays them.
#pragma once

#include <optional>
#include <vector>

#include <quoin/loan/escrow.hpp>
#include <quoin/loan/local_costs.hpp>
#include <quoin/loan/scenario_rules.hpp>

namespace quoin {

/// The years of an account whose first bills are not those of every year, by what its first
/// deposits are set from. The last year is the first with no bill on land alone.
struct NewHomeEscrow {
    EscrowOutlook from_settled; ///< the settled tax, as of comparable property (1024.17(c)(7))
    EscrowOutlook from_first_bills;
};

struct HousingEscrow {
    std::vector<EscrowBill> bills; ///< of the first year, as the deposits are set from them
    EscrowAccount account;         ///< set from the settled tax (12 CFR 1024.17(c)(7))
    /// Where the tax is at first on land alone, or the insurance is prepaid for more than the first
    /// year.
    std::optional<NewHomeEscrow> outlook;
};

/// Nothing where escrow is waived, or the place's due days are not known.
[[nodiscard]] std::optional<HousingEscrow> housing_escrow(const ScenarioRules& rules,
                                                          const LocalCosts& costs);

/// The initial deposit alone, for figures that need no more.
[[nodiscard]] Money initial_escrow_deposit(const ScenarioRules& rules, const LocalCosts& costs);

} // namespace quoin
